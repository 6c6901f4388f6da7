import { describe, expect, it } from "vitest";
import { errorSeries } from "@/lib/progress/error-series";
import type { MarkRecord } from "@/lib/progress/record";
import type { Series } from "@/lib/progress/series";
import { aMark, aRecord, day } from "./records";

function series(id: Series["id"], ...attempts: readonly (readonly Partial<MarkRecord>[])[]): Series {
  const records = attempts.map((marks, i) => aRecord("points", day(i), marks.map(aMark)));
  return errorSeries(records).find((each) => each.id === id) as Series;
}

/** One attempt for each ratio. */
function ratios(...values: readonly number[]): Series {
  return series("ratio", ...values.map((depthRatio) => [{ depthRatio }]));
}

function depths(...values: readonly number[]): Series {
  return series("depth", ...values.map((depthMm) => [{ depthMm }]));
}

describe("errorSeries", () => {
  it("has depth, across and height in millimetres, and the ratio on a logarithmic scale", () => {
    expect(
      errorSeries([]).map(({ id, unit, scale, ideal, points, trend }) => [id, unit, scale, ideal, points, trend]),
    ).toEqual([
      ["depth", "mm", "linear", 0, [], null],
      ["across", "mm", "linear", 0, [], null],
      ["height", "mm", "linear", 0, [], null],
      ["ratio", "ratio", "log", 1, [], null],
    ]);
  });

  it("takes the median size of an attempt's errors, whichever way they went", () => {
    const { points } = series("depth", [{ depthMm: -4 }, { depthMm: 1 }, { depthMm: 2 }, { depthMm: null }]);
    expect(points).toEqual([{ x: 1, y: 2, exercise: "points", when: day(0), marks: 3 }]);
  });

  it("takes the median ratio, half as deep and twice as deep being equally far from right", () => {
    expect(series("ratio", [{ depthRatio: 0.5 }, { depthRatio: 2 }]).points[0]?.y).toBeCloseTo(1, 12);
  });

  it("numbers attempts alike in every series, leaving out those without the error or without marks", () => {
    const records = [
      aRecord("points", day(0), [aMark()]),
      aRecord("old", day(1)),
      aRecord("tops", day(2), [aMark({ depthMm: null, depthRatio: null, heightMm: 3 })]),
      aRecord("points", day(3), [aMark()]),
    ];
    expect(errorSeries(records).map(({ points }) => points.map(({ x }) => x))).toEqual([
      [1, 3],
      [1, 2, 3],
      [2],
      [1, 3],
    ]);
  });

  it("draws the trend as a straight line on the chart's own scale, from four attempts on", () => {
    expect(ratios(0.5, 0.6, 0.7).trend).toBeNull();
    // Each 5 / 4 of the one before, but the third: slopes of the logarithm log 1.25 three times of six, and the wild ones
    // cancel. By hand: pairs 1-2, 1-4, 2-4 give log 1.25; the median is it.
    const { trend } = ratios(0.4, 0.5, 2, 0.78125);
    expect(trend?.from.x).toBe(1);
    expect(trend?.to.x).toBe(4);
    expect((trend?.to.y as number) / (trend?.from.y as number)).toBeCloseTo(1.25 ** 3, 9);
  });

  it("takes the trend of a size by Theil and Sen", () => {
    // The first example of the test of the trend: slope 2, intercept -1.5; a size is never below nothing.
    expect(depths(1, 2, 3, 10).trend).toEqual({ from: { x: 1, y: 0.5 }, to: { x: 4, y: 6.5 } });
    expect(depths(6, 4, 2, 0, 0).trend?.to.y).toBe(0);
  });

  it("looks for the trend in the last sixty attempts", () => {
    const { trend } = depths(...Array.from({ length: 100 }, (_, i) => (i < 40 ? 900 - i : i / 10)));
    expect(trend?.from.x).toBe(41);
    expect(trend?.from.y).toBeCloseTo(4, 9);
    expect(trend?.to.y).toBeCloseTo(9.9, 9);
  });

  it.each([
    [ratios(), "No depth drawn yet."],
    [ratios(0.8), "Your depths are too shallow: drawn at 80 % of the true ones in one exercise."],
    [ratios(1.02, 0.98), "Your depths are true: drawn at 100 % of the true ones over your last two exercises."],
    [
      ratios(0.5, 0.6, 0.7, 0.8),
      "Your depths are too shallow: drawn at 70 % of the true ones over your last three exercises, and coming nearer.",
    ],
    [
      ratios(1.1, 1.2, 1.3, 1.4),
      "Your depths are too deep: drawn at 130 % of the true ones over your last three exercises, and moving away.",
    ],
    [
      ratios(1.2, 1.2, 1.2, 1.2),
      "Your depths are too deep: drawn at 120 % of the true ones over your last three exercises, and steady.",
    ],
    [depths(), "Off in depth: nothing drawn yet."],
    [depths(3), "Off in depth: 3.0 mm on paper in one exercise."],
    [depths(6, 5, 4, 3), "Off in depth: 4.0 mm on paper over your last three exercises, and getting smaller."],
    [depths(3, 3.1, 3, 3.1), "Off in depth: 3.1 mm on paper over your last three exercises, and steady."],
    [depths(1, 2, 3, 4), "Off in depth: 3.0 mm on paper over your last three exercises, and growing."],
  ])("says it in words (%#)", ({ words }, expected) => {
    expect(words).toBe(expected);
  });
});
