import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { FOOT_SCALES, METRIC_SCALES, parseScale, printScale, toPaperMm } from "@/lib/measure/scale";
import { seeded } from "../seeded";

describe("parseScale", () => {
  // 12 in over the inches that stand for a foot: the plain meaning of the notation.
  it.each([
    ["1/8in=1ft", 96],
    ["3/16in=1ft", 64],
    ["1/4in=1ft", 48],
    ["3/8in=1ft", 32],
    ["1/2in=1ft", 24],
    ["1in=1ft", 12],
    ["1:20", 20],
    ["1:24", 24],
    ["1:25", 25],
    ["1:50", 50],
    ["1:100", 100],
    ["1:37", 37],
  ])("reads %s as 1 to %s", (written, ratio) => {
    expect(parseScale(written)).toBe(ratio);
  });

  it.each([
    "",
    "1/4",
    "1/4in",
    "1/4in=2ft",
    `1/4"=1'`,
    "1/4 in = 1 ft",
    "1/0in=1ft",
    "0in=1ft",
    "0/4in=1ft",
    "1:0",
    "1:-50",
    "1:",
    "2:50",
    "1:5e1",
    "1:Infinity",
    "50",
    "one to fifty",
    `1:${"9".repeat(400)}`,
  ])("refuses %j", (written) => {
    expect(parseScale(written)).toBeNull();
  });

  it("never throws and gives a finite ratio above 0 or none", () => {
    const letters = fc.constantFrom(..."0123456789/:.=inft ");
    fc.assert(
      fc.property(fc.string({ unit: letters }), (written) => {
        const ratio = parseScale(written);
        if (ratio !== null) expect(Number.isFinite(ratio) && ratio > 0).toBe(true);
      }),
      seeded,
    );
  });
});

describe("the usual scales", () => {
  it.each([
    ["of a scale rule in feet", FOOT_SCALES],
    ["of a scale rule in metres", METRIC_SCALES],
  ])("%s run from the smallest drawing to the largest", (_, scales) => {
    const ratios = scales.map((scale) => parseScale(scale) ?? Number.NaN);
    expect(ratios).toEqual([...ratios].sort((a, b) => b - a));
  });

  it.each([
    ["1/4in=1ft", `1/4" = 1'-0"`],
    ["3/16in=1ft", `3/16" = 1'-0"`],
    ["1in=1ft", `1" = 1'-0"`],
    ["1:50", "1:50"],
  ])("%s is lettered %s", (written, lettered) => {
    expect(printScale(written)).toBe(lettered);
  });

  it("turns picture metres to paper millimetres: metres times 1000 over the ratio", () => {
    expect(toPaperMm(4.8, 48)).toBeCloseTo(100, 12);
    expect(toPaperMm(-2.5, 50)).toBeCloseTo(-50, 12);
  });
});
