import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fileName } from "@/app/sheet/[id]/file/file-name";
import {
  FORMATS,
  fileAddress,
  KEYS,
  MOST_COPIES,
  mostCopies,
  type Order,
  readOrder,
  VIEWS,
} from "@/app/sheet/[id]/order";
import { PAPERS } from "@/lib/sheet/paper-size";

const PLAIN: Order = {
  view: "sheet",
  format: "pdf",
  paper: "letter",
  key: "none",
  line: "hand",
  point: null,
  copies: 1,
  seed: null,
  page: 1,
};
const read = (query: string) => readOrder(new URLSearchParams(query));

describe("the order that an address writes", () => {
  it("is the plainest there is where nothing is written", () => expect(read("")).toEqual({ ok: true, order: PLAIN }));

  it("is read word by word", () => {
    expect(read("view=construction&format=svg&paper=a3&point=B.foot&page=2")).toEqual({
      ok: true,
      order: { ...PLAIN, view: "construction", format: "svg", paper: "a3", point: "B.foot", page: 2 },
    });
    expect(read("key=points&copies=30&seed=48213")).toEqual({
      ok: true,
      order: { ...PLAIN, key: "points", copies: 30, seed: 48213 },
    });
  });

  it.each([
    ["paper=a5", "paper"],
    ["view=", "view"],
    ["format=exe", "format"],
    ["key=yes", "key"],
    ["copies=0", "copies"],
    ["copies=41", "copies"],
    ["copies=1e3", "copies"],
    ["copies=-1", "copies"],
    ["seed=two", "seed"],
    ["seed=99999999999999999999", "seed"],
    ["page=0", "page"],
  ])("%s is refused in a sentence that names it", (query, name) => {
    const reading = read(query);
    expect(reading.ok).toBe(false);
    if (!reading.ok) expect(reading.problem).toMatch(new RegExp(`“${name}”.*[.]$`));
  });

  it("has fewer sheets where each has a long key of its own", () => {
    expect(mostCopies({ key: "none", seed: 1 })).toBe(MOST_COPIES);
    expect(mostCopies({ key: "all", seed: null })).toBe(MOST_COPIES);
    expect(mostCopies({ key: "points", seed: 1 })).toBe(40);
    expect(mostCopies({ key: "all", seed: 1 })).toBe(30);
    expect(read("key=all&seed=1&copies=31").ok).toBe(false);
    expect(read("key=all&seed=1&copies=30").ok).toBe(true);
  });

  it("of any text is a reading, and one that is read is written again as the same", () => {
    const words = fc.constantFrom(...VIEWS, ...FORMATS, ...PAPERS, ...KEYS, "", "1", "40", "x", "∞", "B.foot");
    const names = fc.constantFrom("view", "format", "paper", "key", "point", "copies", "seed", "page", "other");
    fc.assert(
      fc.property(fc.array(fc.tuple(names, words), { maxLength: 6 }), (pairs) => {
        const reading = readOrder(new URLSearchParams(pairs));
        if (!reading.ok) {
          expect(reading.problem.length).toBeGreaterThan(10);
          return;
        }
        const address = fileAddress("raking-wall", reading.order);
        expect(readOrder(new URLSearchParams(address.slice(address.indexOf("?"))))).toEqual(reading);
      }),
    );
  });
});

describe("the name of a file", () => {
  it.each([
    [PLAIN, "tide-office-letter.pdf"],
    [{ ...PLAIN, copies: 12 }, "tide-office-12-copies-letter.pdf"],
    [{ ...PLAIN, copies: 12, seed: 3, paper: "a4" as const }, "tide-office-class-set-of-12-a4.pdf"],
    [{ ...PLAIN, view: "plan" as const, format: "svg" as const }, "tide-office-plan-letter.svg"],
    [{ ...PLAIN, view: "construction" as const, point: "B.foot" }, "tide-office-construction-B.foot-letter.pdf"],
  ])("of %j is %s", (order, name) => expect(fileName("tide-office", order)).toBe(name));

  it("has no letter that a header or a file system refuses", () => {
    expect(fileName('bühne/"x"\n', PLAIN)).toBe("buhnex-letter.pdf");
    expect(fileName("舞台", PLAIN)).toBe("sheet-letter.pdf");
  });
});
