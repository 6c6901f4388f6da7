import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { attemptAxis, ratioAxis, sizeAxis } from "@/app/record/axes";

const UP = { from: 200, to: 0, room: 24 };

describe("the axis of sizes", () => {
  it.each([
    [[], "2.0"],
    [[0.4, 1.2], "2.0"],
    [[3, 7, 5], "7"],
    // One far off all the others stands at the edge instead of pressing them flat.
    [[1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 60], "2.0"],
  ] as const)("of %j ends at %s", (values, top) => {
    const axis = sizeAxis(values, UP);
    expect(Number(axis.ticks.at(-1)?.words)).toBeGreaterThanOrEqual(Number(top));
    expect(axis.ticks[0]).toEqual({ at: 200, words: expect.stringMatching(/^0/) });
  });

  it("holds what is past its end at the end, and lets lines run on", () => {
    const axis = sizeAxis([1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 60], UP);
    expect(axis.holds(60)).toBe(false);
    expect(axis.at(60)).toBe(0);
    expect(axis.onward(60)).toBeLessThan(-1000);
  });
});

describe("the axis of ratios", () => {
  it("has 1 in its middle, and half and double equally far from it", () => {
    const axis = ratioAxis([0.5, 2, 1.9], UP);
    expect(axis.at(1)).toBeCloseTo(100);
    expect(axis.at(0.5) - 100).toBeCloseTo(100 - axis.at(2));
    expect(axis.ticks.map(({ words }) => words)).toEqual(expect.arrayContaining(["0.5", "1", "2"]));
  });

  it("keeps its ticks' words apart, whatever the ratios", () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: 0.01, max: 100, noNaN: true }), { maxLength: 70 }), (values) => {
        const { ticks, at } = ratioAxis(values, UP);
        const places = ticks.map((tick) => tick.at).sort((a, b) => a - b);
        for (const [i, place] of places.entries())
          if (i > 0) expect(place - (places[i - 1] ?? 0)).toBeGreaterThanOrEqual(24);
        expect(ticks.length).toBeGreaterThan(0);
        for (const value of values) {
          expect(at(value)).toBeGreaterThanOrEqual(0);
          expect(at(value)).toBeLessThanOrEqual(200);
        }
      }),
      { seed: 1, numRuns: 200 },
    );
  });
});

describe("the axis of attempts", () => {
  it.each([
    [1, 1, 600, ["1"]],
    [1, 4, 600, ["1", "2", "3", "4"]],
    [3, 40, 120, ["20", "40"]],
    [3, 40, 160, ["10", "20", "30", "40"]],
  ] as const)("from %i to %i over %i pixels has whole numbers with room for them", (first, last, to, words) => {
    const axis = attemptAxis(first, last, { from: 0, to, room: 40 });
    expect(axis.ticks.map((tick) => tick.words)).toEqual(words);
    expect(axis.at(first)).toBeGreaterThan(0);
    expect(axis.at(last)).toBeLessThan(to);
  });
});
