import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cleanCode, cleanPassphrase } from "@/lib/classroom/accounts/as-written";
import { clientOf, isThisComputer, readProxies } from "@/lib/classroom/accounts/client-address";
import { CODE_LETTERS, makeCode } from "@/lib/classroom/accounts/code";
import { makePassphrase } from "@/lib/classroom/accounts/passphrase";
import { PASSPHRASE_WORDS } from "@/lib/classroom/accounts/passphrase-words";
import { cleanName, sameName } from "@/lib/classroom/accounts/person-name";
import { readPrivateLink, writePrivateLink } from "@/lib/classroom/accounts/private-link";
import { seeded } from "../../seeded";

describe("passphrases", () => {
  it("are of plain short words, each in the list once, 256 of them and more", () => {
    expect(PASSPHRASE_WORDS.length).toBeGreaterThanOrEqual(256);
    expect(new Set(PASSPHRASE_WORDS).size).toBe(PASSPHRASE_WORDS.length);
    for (const word of PASSPHRASE_WORDS) expect(word).toMatch(/^[a-z]{3,10}$/);
    expect(4 * Math.log2(PASSPHRASE_WORDS.length)).toBeGreaterThan(36);
  });

  it("come from anywhere in the list, and read the same however they are written", () => {
    expect(makePassphrase(() => 0)).toBe("acorn acorn acorn acorn");
    expect(makePassphrase((below) => below - 1)).toBe("zipper zipper zipper zipper");
    expect(cleanPassphrase("  Acorn - ZIPPER,drum.oat ")).toBe("acorn zipper drum oat");
  });
});

describe("class codes", () => {
  it("have six letters, none that is taken for another or for a figure", () => {
    for (let i = 0; i < 500; i++) expect(makeCode()).toMatch(new RegExp(`^[${CODE_LETTERS}]{6}$`));
    expect(CODE_LETTERS).not.toMatch(/[ILOQSUVZ0-9]/);
    expect(cleanCode(" ab-c dEf ")).toBe("ABCDEF");
  });

  it("have each letter as often as any other, over every byte there is", () => {
    const counts = new Map<string, number>();
    const bytes = Array.from({ length: 256 }, (_, i) => i);
    const source = (size: number) => Uint8Array.from(bytes.splice(0, size));
    let code = "";
    while (bytes.length >= 12) code += makeCode(source);
    for (const letter of code) counts.set(letter, (counts.get(letter) ?? 0) + 1);
    expect(Math.max(...counts.values()) - Math.min(...counts.values())).toBeLessThanOrEqual(1);
    expect(counts.size).toBe(CODE_LETTERS.length);
  });
});

describe("names", () => {
  it.each([
    ["  Wim \t de  Vries\n", "Wim de Vries"],
    ["Zoe\u0308", "Zo\u00eb"],
    ["\u202eevil\u0000", "evil"],
    ["\ud800x", "x"],
    ["\u200b", ""],
  ])("%j is kept as %j", (written, kept) => {
    expect(cleanName(written)).toBe(kept);
  });

  it("are the same in any capitals and kinds of letters", () => {
    expect(sameName("WIM", " wim ")).toBe(true);
    expect(sameName("\uff37im", "Wim")).toBe(true);
    expect(sameName("Wim", "Wima")).toBe(false);
  });

  it("come back out of a private link as they went in, whatever they are", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary", minLength: 1 }), (any) => {
        const name = cleanName(any);
        fc.pre(name !== "");
        const way = { code: "ABCDEF", name, passphrase: "acorn drum oat zipper" };
        const link = writePrivateLink(way);
        expect(readPrivateLink(link.slice(link.indexOf("#")))).toEqual(way);
      }),
      seeded,
    );
  });
});

describe("the client behind a connection", () => {
  const proxies = (written: string) => {
    const read = readProxies(written);
    if (typeof read === "string") throw new Error(read);
    return read;
  };
  const from = (remote: string, forwarded: string | null, trusted = "", proto = "https") =>
    clientOf(
      remote,
      new Headers(forwarded === null ? {} : { "x-forwarded-for": forwarded, "x-forwarded-proto": proto }),
      proxies(trusted),
    );

  // Addresses for documentation: RFC 5737 and RFC 3849.
  it.each([
    ["no proxy, nothing said", "203.0.113.7", null, "", "203.0.113.7", false],
    ["no proxy, a forged word", "203.0.113.7", "198.51.100.1", "", "203.0.113.7", false],
    ["a proxy that was not named", "10.0.0.1", "198.51.100.1", "127.0.0.1", "10.0.0.1", false],
    ["the named proxy", "127.0.0.1", "198.51.100.1", "127.0.0.1", "198.51.100.1", true],
    ["forged before the proxy's own", "127.0.0.1", "1.2.3.4, 198.51.100.1", "127.0.0.1", "198.51.100.1", true],
    ["two named proxies", "10.0.0.1", "1.2.3.4, 198.51.100.1, 10.9.9.9", "10.0.0.0/8", "198.51.100.1", true],
    ["rubbish from the proxy", "127.0.0.1", "unknown", "127.0.0.1", "127.0.0.1", true],
    ["IPv4 that came by IPv6", "::ffff:203.0.113.7", null, "", "203.0.113.7", false],
    ["a household's many addresses", "2001:db8:1:2:3:4:5:6", null, "", "2001:db8:1:2::/64", false],
    ["the same, written short", "2001:db8:1:2::9", null, "", "2001:db8:1:2::/64", false],
    ["this computer by IPv6", "::1", null, "", "::1", false],
    ["a proxy by IPv6", "::1", "198.51.100.1", "::1", "198.51.100.1", true],
  ])("%s", (_, remote, forwarded, trusted, address, secure) => {
    expect(from(remote, forwarded, trusted)).toEqual({ address, secure });
  });

  it("says what it cannot read of the proxies", () => {
    for (const written of ["proxy.example", "10.0.0.0/33", "10.0.0.0/x", "::1/129"])
      expect(readProxies(written)).toMatch(/^PLASTERLINE_PROXY says ".*", which is no address/);
  });

  it("knows this computer", () => {
    expect(["127.0.0.1", "127.8.8.8", "::1"].map(isThisComputer)).toEqual([true, true, true]);
    expect(["127", "128.0.0.1", "", "::2"].map(isThisComputer)).toEqual([false, false, false, false]);
  });
});
