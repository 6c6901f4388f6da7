import { describe, expect, it } from "vitest";
import { shippedExercise } from "@/tests/drawing/practice-sheet/exercises";
import { marksByHabit } from "../photographer/marks-by-habit";
import { canBeTold } from "./can-be-told";

describe("a drawing without letters", () => {
  it.each([
    // Two pairs of doors in walls that mirror each other, each put on the other's side: a right drawing to look at.
    ["two-pairs-of-doors", "wrong-side", false],
    ["two-pairs-of-doors", "full-height", true],
    // One wall goes off to stage left: there is no other that it could be.
    ["raking-wall", "square-wall", true],
    ["the-tide-office", "plan-depth", true],
    ["nine-lamps", "flat-floor", true],
  ])("of %s by %s tells which point is which: %s", (id, habit, told) => {
    const exercise = shippedExercise(id);
    expect(canBeTold(exercise, marksByHabit(exercise, habit, 5))).toBe(told);
  });

  it.each(["two-pairs-of-doors", "halves-and-quarters", "table-square-on", "customs-hall", "room-from-its-picture"])(
    "of %s by no habit tells it",
    (id) => {
      const exercise = shippedExercise(id);
      expect(canBeTold(exercise, marksByHabit(exercise, null, 5))).toBe(true);
    },
  );
});
