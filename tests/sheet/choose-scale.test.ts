import { describe, expect, it } from "vitest";
import { chooseScale, sheetScales } from "@/lib/sheet/choose-scale";

describe("the scales of a sheet", () => {
  it("run from large drawings to small ones, as they stand on a scale rule", () => {
    expect(sheetScales("ft-in").map(({ ratio }) => ratio)).toEqual([12, 24, 32, 48, 64, 96, 128, 192]);
    expect(sheetScales("m").map(({ ratio }) => ratio)).toEqual([20, 24, 25, 50, 75, 100, 125, 200]);
  });

  it.each([
    // 36 ft at 1/4 in to the foot are 9 in, and a Letter sheet is 8 1/2 in wide.
    ["ft-in", 36 * 304.8, 215.9, "3/16in=1ft"],
    ["ft-in", 36 * 304.8, 279.4, "1/4in=1ft"],
    ["ft-in", 32 * 304.8, 101.6, "1/8in=1ft"],
    ["m", 10_000, 210, "1:50"],
    ["m", 10_000, 199, "1:75"],
  ] as const)("%s: %d mm of stage in %d mm of paper are drawn at %s", (units, stage, paper, written) => {
    const chosen = chooseScale(units, ({ ratio }) => (stage / ratio <= paper + 1e-9 ? ratio : null));
    expect(chosen?.scale.written).toBe(written);
    expect(chosen?.laid).toBe(chosen?.scale.ratio);
  });

  it("is none where nothing fits", () => expect(chooseScale("m", () => null)).toBeNull());
});
