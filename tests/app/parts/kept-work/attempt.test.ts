import { describe, expect, it } from "vitest";
import {
  type Attempt,
  addLine,
  beginMove,
  commitMark,
  goOn,
  isFinished,
  moveMark,
  newAttempt,
  removeLine,
  stepOf,
  undoMove,
} from "@/app/_parts/kept-work/attempt";

const ASKED = ["A.foot", "B.foot"];
const EXERCISE = { id: "trial", version: 3 };

function placed(attempt: Attempt, at: readonly [number, number]): Attempt {
  return moveMark(beginMove(attempt), at, "mouse");
}

describe("an attempt", () => {
  it("goes from placing to a correction to the next point to its end", () => {
    const first = commitMark(placed(newAttempt(EXERCISE), [1, 2]), ASKED);
    expect(first.marks).toEqual([{ point: "A.foot", at: [1, 2], with: "mouse" }]);
    expect([first.correcting, stepOf(first)]).toEqual([true, 0]);
    const second = goOn(first);
    expect([stepOf(second), isFinished(second, ASKED)]).toEqual([1, false]);
    expect(isFinished(goOn(commitMark(placed(second, [0, 1]), ASKED)), ASKED)).toBe(true);
  });

  it("sets down nothing where nothing was placed, and moves nothing during a correction", () => {
    const empty = newAttempt(EXERCISE);
    expect(commitMark(empty, ASKED)).toBe(empty);
    const corrected = commitMark(placed(empty, [1, 2]), ASKED);
    expect(moveMark(corrected, [5, 5], "keys")).toBe(corrected);
  });

  it("takes moves back one by one, to no mark at all", () => {
    const twice = placed(placed(newAttempt(EXERCISE), [1, 2]), [3, 4]);
    expect(undoMove(twice).pending).toEqual([1, 2]);
    expect(undoMove(undoMove(twice)).pending).toBeNull();
    expect(undoMove(newAttempt(EXERCISE)).pending).toBeNull();
  });

  it("numbers blue lines so that no number comes twice", () => {
    const line = { plane: "picture", from: [0, 0], to: [1, 1], through: ["a", "b"] } as const;
    const two = addLine(addLine(newAttempt(EXERCISE), line), line);
    expect(addLine(removeLine(two, 1), line).lines.map(({ id }) => id)).toEqual([2, 3]);
  });
});
