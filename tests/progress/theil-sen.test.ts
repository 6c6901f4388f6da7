import fc from "fast-check";
import { TheilSenRegression } from "ml-regression-theil-sen";
import { describe, expect, it } from "vitest";
import type { Vector2 } from "@/lib/geometry/vector";
import { median, theilSen } from "@/lib/progress/theil-sen";
import { seeded } from "../seeded";

describe("theilSen", () => {
  const cases: readonly (readonly [string, readonly Vector2[], number, number])[] = [
    // Slopes 1, 1, 3, 1, 4, 7, their median (1 + 3) / 2; left over -1, -2, -3, 2, their median -1.5. By hand.
    [
      "four points, the last one wild",
      [
        [1, 1],
        [2, 2],
        [3, 3],
        [4, 10],
      ],
      2,
      -1.5,
    ],
    // Slopes 0, 4/5, 4/3; left over 1, 1/5, 1. By hand.
    [
      "three points",
      [
        [0, 1],
        [1, 1],
        [2.5, 3],
      ],
      0.8,
      1,
    ],
    // Sen (1968), his numerical example (data from memory): of 21 slopes, sorted by hand, the eleventh is 4;
    // left over 5, 7, 7, 4, 5, 7, 6, their median 6.
    [
      "Sen's own example",
      [
        [1, 9],
        [2, 15],
        [3, 19],
        [4, 20],
        [10, 45],
        [12, 55],
        [18, 78],
      ],
      4,
      6,
    ],
    // Two of one x give no slope between them: slopes 1 and 3; left over 0, -2, 0. By hand.
    [
      "two points of one x",
      [
        [0, 0],
        [1, 1],
        [1, 3],
      ],
      2,
      0,
    ],
  ];
  it.each(cases)("%s", (_name, points, slope, intercept) => {
    const trend = theilSen(points);
    expect(trend.found).toBe(true);
    if (!trend.found) return;
    expect(trend.slope).toBeCloseTo(slope, 12);
    expect(trend.intercept).toBeCloseTo(intercept, 12);
  });

  it.each([
    ["nothing", []],
    ["one point", [[1, 2]]],
    [
      "points of one x",
      [
        [1, 2],
        [1, 5],
      ],
    ],
  ] as readonly (readonly [string, readonly Vector2[]])[])("finds no line through %s", (_name, points) => {
    expect(theilSen(points)).toEqual({ found: false });
  });

  // Of an even number of slopes that package takes the lower middle one, so the two agree where slopes and points are odd
  // in number: 3, 7, 11 or 15 points, no two of one x.
  const anyPoints = fc
    .constantFrom(3, 7, 11, 15)
    .chain((size) =>
      fc.tuple(
        fc.uniqueArray(fc.integer({ min: 0, max: 40 }), { minLength: size, maxLength: size }),
        fc.array(fc.double({ min: -100, max: 100, noNaN: true }), { minLength: size, maxLength: size }),
      ),
    );

  it("agrees with ml-regression-theil-sen", () => {
    fc.assert(
      fc.property(anyPoints, ([x, y]) => {
        const trend = theilSen(x.map((each, i): Vector2 => [each, y[i] as number]));
        const theirs = new TheilSenRegression(x, y);
        expect(trend.found && trend.slope).toBeCloseTo(theirs.slope, 9);
        expect(trend.found && trend.intercept).toBeCloseTo(theirs.intercept, 9);
      }),
      seeded,
    );
  });

  it("is not moved from a straight line by one wild point among seven", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 6 }),
        fc.double({ min: -1e6, max: 1e6, noNaN: true }),
        fc.double({ min: -5, max: 5, noNaN: true }),
        (at, wild, slope) => {
          const line = Array.from({ length: 7 }, (_, x): Vector2 => [x, x === at ? wild : slope * x + 1]);
          const trend = theilSen(line);
          expect(trend.found && trend.slope).toBeCloseTo(slope, 6);
        },
      ),
      seeded,
    );
  });
});

describe("median", () => {
  it.each([
    [[], null],
    [[3], 3],
    [[4, 1], 2.5],
    [[9, 1, 2], 2],
    [[10, 2, 1, 9], 5.5],
    [[Number.MAX_VALUE, Number.MAX_VALUE], Number.MAX_VALUE],
  ])("of %j is %j", (values, middle) => {
    expect(median(values)).toBe(middle);
  });
});
