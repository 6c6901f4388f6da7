import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { importMembers } from "@/lib/classroom/homework/import-members";
import { readClassList } from "@/lib/classroom/homework/read-class-list";
import { findSeparator, readCsv } from "@/lib/classroom/homework/read-csv";
import { join, openRoom } from "../accounts/room";
import { onBothEngines } from "../engines";

describe("a CSV file", () => {
  it.each([
    // RFC 4180, section 2, rules 1 to 7, its own examples.
    [
      "aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n",
      [
        ["aaa", "bbb", "ccc"],
        ["zzz", "yyy", "xxx"],
      ],
    ],
    [
      "aaa,bbb,ccc\r\nzzz,yyy,xxx",
      [
        ["aaa", "bbb", "ccc"],
        ["zzz", "yyy", "xxx"],
      ],
    ],
    [
      '"aaa","bbb","ccc"\r\nzzz,yyy,xxx',
      [
        ["aaa", "bbb", "ccc"],
        ["zzz", "yyy", "xxx"],
      ],
    ],
    [
      '"aaa","b\r\nbb","ccc"\r\nzzz,yyy,xxx',
      [
        ["aaa", "b\r\nbb", "ccc"],
        ["zzz", "yyy", "xxx"],
      ],
    ],
    ['"aaa","b""bb","ccc"', [["aaa", 'b"bb', "ccc"]]],
    // Beyond it.
    ["", []],
    ["a", [["a"]]],
    ['""', [[""]]],
    ["a,", [["a", ""]]],
    ["a\rb\nc", [["a"], ["b"], ["c"]]],
    ["\uFEFFa,b", [["a", "b"]]],
    ['Jo "Sparks" Hale,3', [['Jo "Sparks" Hale', "3"]]],
    ['"open, to the end\nof all', [["open, to the end\nof all"]]],
    ["a\n\nb", [["a"], [""], ["b"]]],
  ])("%j is read as %j", (text, records) => {
    expect(readCsv(text)).toEqual(records);
  });

  it.each([
    ["a,b", ","],
    ["a;b,c", ";"],
    ["a\tb;c,d", "\t"],
    ['"a;b",c', ","],
    ["a", ","],
  ])("of %j is separated by %j", (text, separator) => {
    expect(findSeparator(text)).toBe(separator);
  });

  it("comes back as it was written, whatever stands in it", () => {
    const field = fc.string({ unit: fc.constantFrom("a", ",", '"', "\n", "\r", ";", " ", "é") });
    const quote = (text: string) => `"${text.replaceAll('"', '""')}"`;
    fc.assert(
      fc.property(fc.array(fc.array(field, { minLength: 1 }), { minLength: 1 }), (records) => {
        const text = records.map((record) => record.map(quote).join(",")).join("\r\n");
        expect(readCsv(text)).toEqual(records);
      }),
      { seed: 4180 },
    );
  });
});

describe("a class list", () => {
  const read = (text: string, inClass: readonly string[] = []) =>
    readClassList(text, inClass).map(({ line, name, number, trouble }) => [line, name, number, trouble]);
  it.each([
    [
      "Wim\nTess\n\n  Noor  ",
      [
        [1, "Wim", null, "none"],
        [2, "Tess", null, "none"],
        [4, "Noor", null, "none"],
      ],
    ],
    [
      "7\tWim\n8\tTess",
      [
        [1, "Wim", "7", "none"],
        [2, "Tess", "8", "none"],
      ],
    ],
    ["Wim,B7", [[1, "Wim", "B7", "none"]]],
    ["Wim 2", [[1, "Wim 2", null, "none"]]],
    ['"Hale, Jo";3', [[1, "Hale, Jo", "3", "none"]]],
    ["Number;Last name;First name\n3;Hale;Jo", [[2, "Jo Hale", "3", "none"]]],
    ["\nName,E-mail,No\nJo,jo@x.example,9", [[3, "Jo", "9", "none"]]],
    [
      "Wim\nwim\nTess",
      [
        [1, "Wim", null, "none"],
        [2, "wim", null, "twice-in-list"],
        [3, "Tess", null, "none"],
      ],
    ],
    ["x".repeat(61), [[1, "x".repeat(61), null, "too-long"]]],
    [" , ,\n\u200b", []],
  ])("%j names %j", (text, expected) => {
    expect(read(text)).toEqual(expected);
  });

  it("tells who is in the class already, whatever capitals", () => {
    expect(read("TESS\nNoor", ["Tess"])).toEqual([
      [1, "TESS", null, "in-class"],
      [2, "Noor", null, "none"],
    ]);
  });
});

onBothEngines("a class list put in", ({ newStore }) => {
  it("is first looked at, then makes places once, which students take by joining", async () => {
    const room = await openRoom(await newStore());
    const { store, classId } = room;
    await join(room, "Tess");
    const text = "Wim,7\ntess\nNoor\nNoor";
    const seen = await importMembers(store, { classId, text, put: false });
    expect(seen).toMatchObject({ ok: true, put: 0 });
    const count = async () => (await store.db.selectFrom("member").select("id").execute()).length;
    expect(await count()).toBe(1);
    const both = await Promise.all([1, 2].map(() => importMembers(store, { classId, text, put: true })));
    expect(both.map((each) => each.ok && each.put).sort()).toEqual([0, 2]);
    expect(await count()).toBe(3);
    const wim = await join(room, "wim");
    const row = await store.db.selectFrom("member").selectAll().where("id", "=", wim.memberId).executeTakeFirst();
    expect(row).toMatchObject({ name: "Wim", number: "7" });
    expect(await count()).toBe(3);
  });

  it("is refused in words when it holds no name, too many lines, or more than a class has places", async () => {
    const { store, classId } = await openRoom(await newStore());
    const reason = async (text: string) => {
      const done = await importMembers(store, { classId, text, put: true });
      return done.ok ? done.put : done.reason;
    };
    expect(await reason(" \n,")).toBe("no-names");
    expect(await reason("a\n".repeat(2001))).toBe("too-long");
    const names = (many: number) => Array.from({ length: many }, (_, i) => `Student ${String(i)}`).join("\n");
    expect(await reason(names(501))).toBe("class-full");
    expect(await reason(names(500))).toBe(500);
    expect(await reason("One more")).toBe("class-full");
  });
});
