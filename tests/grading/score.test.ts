import { describe, expect, it } from "vitest";
import { scoreExercise, scoreMark } from "@/lib/grading/score";

describe("scoreMark", () => {
  // 100 to one tolerance, then straight down to 0 at five
  it.each([
    [0, 100],
    [0.5, 100],
    [1, 100],
    [2, 75],
    [3, 50],
    [4, 25],
    [5, 0],
    [50, 0],
    [1e300, 0],
  ])("%s tolerances off is %s", (tolerances, score) => {
    expect(scoreMark(tolerances * 1.75, 1.75)).toBeCloseTo(score, 9);
  });

  it("gives nothing for a mark that shows no place", () => {
    expect(scoreMark(null, 1)).toBe(0);
  });
});

describe("scoreExercise", () => {
  it.each([
    [[100, 100, 100], 3, 100],
    [[100, 50], 2, 75],
    [[100], 4, 25], // a missing mark counts 0
    [[0], 1, 0],
  ])("of %o of %s asked is %s", (scores, asked, score) => {
    expect(scoreExercise(scores, asked)).toBe(score);
  });
});
