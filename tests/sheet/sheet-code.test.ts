import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { UNITS } from "@/lib/exercise/exercise";
import { readVariantId, variantId } from "@/lib/generator/variant-id";
import { sheetScales } from "@/lib/sheet/choose-scale";
import { PAPERS } from "@/lib/sheet/paper-size";
import { printSheetCode, readSheetCode, type SheetCode } from "@/lib/sheet/sheet-code";

const SCALES = (["ft-in", "m"] as const).flatMap(sheetScales).map(({ written }) => written);
const ids = fc.oneof(
  fc.stringMatching(/^[a-z0-9][a-z0-9_-]{0,40}$/),
  fc.constantFrom("bühne-2", "舞台", "Ärmelkanal_9"),
  fc
    .record({ unit: fc.constantFrom(...UNITS), level: fc.integer({ min: 1, max: 5 }), seed: fc.maxSafeNat() })
    .map(variantId),
);
const whole = fc.integer({ min: 1, max: 999_999_999 });
const codes: fc.Arbitrary<SheetCode> = fc.record({
  exercise: ids,
  version: whole,
  page: whole,
  paper: fc.constantFrom(...PAPERS),
  scale: fc.constantFrom(...SCALES),
  copy: fc.option(whole),
});

describe("the text of a sheet's code", () => {
  it("is short and in words", () => {
    const code = { exercise: "raking-wall", version: 1, page: 1, paper: "letter", scale: "1:100", copy: null } as const;
    expect(printSheetCode(code)).toBe("plasterline 1 raking-wall 1 1 letter 1:100");
    expect(printSheetCode({ ...code, scale: "1/8in=1ft", copy: 12 })).toBe(
      "plasterline 1 raking-wall 1 1 letter 1/8in=1ft 12",
    );
  });

  it("is read back as it was printed", () => {
    fc.assert(
      fc.property(codes, (code) => {
        expect(readSheetCode(printSheetCode(code))).toEqual({ kind: "read", code });
      }),
    );
  });

  it("names a generated exercise by the id that makes it again", () => {
    const order = { unit: "sets", level: 4, seed: 48213 } as const;
    const code = { version: 1, page: 1, paper: "a3", scale: "1:50", copy: 7 } as const;
    const read = readSheetCode(printSheetCode({ ...code, exercise: variantId(order) }));
    expect(read.kind === "read" && readVariantId(read.code.exercise)).toEqual(order);
  });

  it.each([
    ["", { kind: "not ours" }],
    ["https://example.org/", { kind: "not ours" }],
    ["plasterline", { kind: "not ours" }],
    ["Plasterline 1 a 1 1 a4 1:50", { kind: "not ours" }],
    ["plasterline 2 something quite different", { kind: "newer", form: 2 }],
    ["plasterline 1 ../secret 1 1 a4 1:50", { kind: "spoiled", what: "the exercise" }],
    ["plasterline 1 raking-wall 0 1 a4 1:50", { kind: "spoiled", what: "the version" }],
    ["plasterline 1 raking-wall 1 one a4 1:50", { kind: "spoiled", what: "the page" }],
    ["plasterline 1 raking-wall 1 1 a5 1:50", { kind: "spoiled", what: "the paper" }],
    ["plasterline 1 raking-wall 1 1 a4 half", { kind: "spoiled", what: "the scale" }],
    ["plasterline 1 raking-wall 1 1 a4", { kind: "spoiled", what: "the scale" }],
    ["plasterline 1 raking-wall 1 1 a4 1:50 -3", { kind: "spoiled", what: "the copy" }],
    ["plasterline 1 raking-wall 1 1 a4 1:50 3 more", { kind: "spoiled", what: "the end" }],
    ["plasterline 1  raking-wall 1 1 a4 1:50", { kind: "spoiled", what: "the exercise" }],
  ])("%j is told for what it is", (text, expected) => expect(readSheetCode(text)).toEqual(expected));

  it("of any text is a result, never an exception, and what it reads prints as the same text", () => {
    const bits = fc.constantFrom("plasterline", "1", "2", "a", "a4", "1:50", "1/8in=1ft", "", "-", "\n", "∞", "1e9");
    const texts = fc.oneof(
      fc.string(),
      fc.array(bits, { maxLength: 9 }).map((each) => each.join(" ")),
    );
    fc.assert(
      fc.property(texts, (text) => {
        const reading = readSheetCode(text);
        if (reading.kind === "read") expect(printSheetCode(reading.code)).toBe(text);
        else expect(["not ours", "newer", "spoiled"]).toContain(reading.kind);
      }),
    );
  });
});
