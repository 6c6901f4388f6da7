import { describe, expect, it } from "vitest";
import { exercisePoints, type ProjectedPoint } from "@/lib/exercise/exercise-points";
import type { Part } from "@/lib/progress/error-parts";
import { guessFor, plausibleArea } from "@/lib/progress/guess-for";
import { LEAST_GUESS, MOST_GUESS } from "@/lib/progress/trace-skill";
import { plainStage } from "./plain-stage";

const exercise = plainStage();
const point = (name: string) => exercisePoints(exercise).get(name) as ProjectedPoint;

describe("plausibleArea on the plain stage, with a tolerance of 2 mm", () => {
  // By hand: half of a band 4 mm wide, or a quarter of the floor.
  it.each([
    ["depth", "B.foot", 2 * Math.hypot(10, 25)], // the ray from [2, 0] to [1, 2.5]
    ["across", "B.foot", 2 * 60], // the floor is 12 m wide, half that at s = 1/2
    ["wall", "B.foot", 2 * 60],
    ["height", "B.top", 2 * 55], // from the foot at 2.5 m to the top of the opening at 8 m
    ["place", "B.foot", 2250 / 4], // a trapezium of 120 mm and 60 mm, 25 mm high: 2250 mm2
  ] as readonly (readonly [Part, string, number])[])("%s at %s", (part, name, area) => {
    expect(plausibleArea(exercise, point(name), part, 2)).toBeCloseTo(area, 9);
  });
});

describe("guessFor", () => {
  it("is the disc's area over the plausible one", () => {
    // pi 2^2 / (2 hypot(10, 25)) = 12.566 / 53.852
    expect(guessFor(exercise, point("B.foot"), "depth", 2)).toBeCloseTo(0.2334, 4);
  });

  it("follows the scale: the same tolerance on a sheet twice as large is harder to hit by luck", () => {
    expect(guessFor(exercise, point("B.foot"), "depth", 2, 50)).toBe(LEAST_GUESS);
  });

  it.each([
    ["a wide way", "B.foot", "across", 2, LEAST_GUESS],
    ["a tolerance as wide as the way", "B.foot", "depth", 20, MOST_GUESS],
  ] as readonly (readonly [string, string, Part, number, number])[])(
    "is bounded: %s",
    (_name, name, part, mm, held) => {
      expect(guessFor(exercise, point(name), part, mm)).toBe(held);
    },
  );

  it("is the most where there is no way along which to be wrong", () => {
    const flat = plainStage({ viewer: { distance: 10, eyeHeight: 1e-9 } });
    const foot = { ...point("B.foot"), at: [0, 10, 0] as const };
    expect(guessFor(flat, foot, "depth", 2)).toBe(MOST_GUESS);
  });
});
