import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { FOOT_M, INCH_M, LENGTH_PATTERN, type LengthUnits, parseLength } from "@/lib/measure/length";
import { seeded } from "../seeded";

function metres(written: number | string, units: LengthUnits = "m"): number {
  const parsed = parseLength(written, units);
  if (!parsed.ok) throw new Error(parsed.reason);
  return parsed.metres;
}

describe("parseLength", () => {
  // 1 in = 25.4 mm exactly (international yard and pound agreement, 1959), so every expected value is a plain product.
  it.each([
    [`7'-3"`, 87 * INCH_M],
    [`7' 3 1/2"`, 87.5 * INCH_M],
    [`7'3"`, 87 * INCH_M],
    [`7'-3 1/2"`, 87.5 * INCH_M],
    [`7' - 3"`, 87 * INCH_M],
    [`7' -3"`, 87 * INCH_M],
    [`7'- 3"`, 87 * INCH_M],
    [`7'-0"`, 84 * INCH_M],
    [`7'-0 1/2"`, 84.5 * INCH_M],
    [`7'-1/2"`, 84.5 * INCH_M],
    [`0'-6"`, 6 * INCH_M],
    [`7' 3.5"`, 87.5 * INCH_M],
    [`6"`, 6 * INCH_M],
    [`6.5"`, 6.5 * INCH_M],
    [`3/4"`, 0.75 * INCH_M],
    [`3 1/2"`, 3.5 * INCH_M],
    [`18"`, 18 * INCH_M],
    [`7.25'`, 87 * INCH_M],
    [`7'`, 84 * INCH_M],
    ["3.6 m", 3.6],
    ["3.6m", 3.6],
    ["360 cm", 3.6],
    ["450 mm", 0.45],
    ["0 m", 0],
    ["  450 mm  ", 0.45],
    // typographic marks: apostrophe and quotation mark, prime and double prime
    ["7’-3”", 87 * INCH_M],
    ["7′-3″", 87 * INCH_M],
    ["7′ 3 1/2″", 87.5 * INCH_M],
    ["7.25’", 87 * INCH_M],
    ["3/4″", 0.75 * INCH_M],
    // a leading minus covers the whole length
    [`-7'-3"`, -87 * INCH_M],
    [`- 7'-3"`, -87 * INCH_M],
    [`-3/4"`, -0.75 * INCH_M],
    ["-3.6 m", -3.6],
    ["−450 mm", -0.45],
  ])("reads %s", (written, expected) => {
    expect(metres(written)).toBeCloseTo(expected, 12);
    // a string carries its own unit, whatever the file's bare numbers are
    expect(metres(written, "ft-in")).toBe(metres(written, "m"));
    expect(written).toMatch(LENGTH_PATTERN);
  });

  it.each([
    [7.25, "ft-in", 7.25 * FOOT_M],
    [-17, "ft-in", -17 * FOOT_M],
    [0, "ft-in", 0],
    [7.25, "m", 7.25],
    [-0.5, "m", -0.5],
  ] as const)("reads the bare number %s of a file in %s", (written, units, expected) => {
    expect(metres(written, units)).toBe(expected);
  });

  it.each([
    "",
    " ",
    "seven feet",
    "7",
    "3.6",
    "7 ft",
    "7 in",
    "7ft 3in",
    `7'3`,
    `7"3'`,
    `7'-3'`,
    `7"-3"`,
    `7''`,
    "‘7",
    "7“",
    `7.5'-3"`,
    `7'--3"`,
    `--7'`,
    `7'-(3)"`,
    `+7'`,
    `7'-3""`,
    `3/"`,
    `/4"`,
    `3/0"`,
    `7'-3/0"`,
    `7'-12"`,
    "3,6 m",
    "3.6 M",
    "3.6 metres",
    "3.6 km",
    "3. m",
    ".5 m",
    "1e3 mm",
    "0x10 mm",
    "NaN",
    "Infinity m",
    "∞",
    `7'-3" 5"`,
    "3.6 m 2 cm",
    "7'\u00003\"",
  ])("refuses %j and shows what was read", (written) => {
    const parsed = parseLength(written, "ft-in");
    expect(parsed.ok).toBe(false);
    if (!parsed.ok) expect(parsed.reason).toContain(`"${written.trim()}"`);
  });

  it.each([
    ["too many digits for a number", "9".repeat(400)],
    ["too many digits of feet", `${"9".repeat(400)}'`],
  ])("refuses %s with unit or without", (_, written) => {
    expect(parseLength(written, "m").ok).toBe(false);
    expect(parseLength(`${written} m`, "m").ok).toBe(false);
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])("refuses the number %s", (written) => {
    expect(parseLength(written, "m")).toEqual({ ok: false, reason: "a length must be a finite number" });
  });

  it("clips what it shows of a long text", () => {
    const parsed = parseLength("x".repeat(5000), "m");
    expect(parsed.ok).toBe(false);
    if (!parsed.ok) expect(parsed.reason.length).toBeLessThan(200);
  });

  // A backtracking pattern takes minutes over these; reading each at once is the point.
  it.each([
    ["blanks", " ".repeat(500_000)],
    ["blanks after feet", `7'${" ".repeat(500_000)}x`],
    ["digits", `${"7".repeat(500_000)}x`],
    ["digits and blanks", `${"7 ".repeat(250_000)}x`],
  ])("refuses half a million %s without trying every split", (_, written) => {
    const began = performance.now();
    expect(parseLength(written, "m").ok).toBe(false);
    expect(LENGTH_PATTERN.test(written)).toBe(false);
    expect(performance.now() - began).toBeLessThan(4000);
  });

  it("never throws, and reads nothing but finite lengths", () => {
    const letters = fc.constantFrom(..."0123456789'\"’”′″-−./ mc\u0000é");
    fc.assert(
      fc.property(fc.oneof(fc.string({ unit: letters }), fc.string({ unit: "binary" })), (written) => {
        const parsed = parseLength(written, "ft-in");
        if (parsed.ok) expect(Number.isFinite(parsed.metres)).toBe(true);
        else expect(parsed.reason).not.toBe("");
        // the schema's pattern is the same grammar, but for what only arithmetic tells
        if (parsed.ok) expect(written).toMatch(LENGTH_PATTERN);
      }),
      seeded,
    );
  });

  it("reads feet and inches as their sum", () => {
    fc.assert(
      fc.property(fc.nat(200), fc.nat(11), fc.nat(15), fc.boolean(), (feet, inches, sixteenths, minus) => {
        const written = `${minus ? "-" : ""}${feet}'-${inches} ${sixteenths}/16"`;
        const expected = (feet * 12 + inches + sixteenths / 16) * INCH_M;
        expect(metres(written)).toBeCloseTo(minus ? -expected : expected, 9);
      }),
      seeded,
    );
  });
});
