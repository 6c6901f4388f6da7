import fc from "fast-check";
import { describe, expect, it, vi } from "vitest";
import type { Exercise } from "@/lib/exercise/exercise";
import type { Grade } from "@/lib/grading/grade";
import { gradeMarks } from "@/lib/grading/grade-marks";
import { HABITS } from "@/lib/habits/all-habits";
import { revealedWays } from "@/lib/habits/reveal";
import { anyExercise, askedPoints, markAll } from "../grading/any-exercise";
import { real } from "../perspective/arbitraries";
import { seeded } from "../seeded";
import { drawMarks, startDice } from "./student";

const anyTask = fc.constantFrom("true" as const, "own" as const).chain(anyExercise);

/** Marks by a student with one of the exercise's own habits or none, and a hand of any steadiness; some of them left out. */
const anyGraded: fc.Arbitrary<readonly [Exercise, Grade, () => Grade]> = anyTask.chain((exercise) => {
  const ways = revealedWays(exercise);
  return fc
    .record({
      way: fc.option(fc.nat(Math.max(0, ways.length - 1))),
      hand: real(0, 0.05),
      seed: fc.nat(),
      kept: real(0.2, 1),
    })
    .map(({ way, hand, seed, kept }) => {
      const grade = () => {
        const dice = startDice(seed);
        const held = way === null ? undefined : ways[way];
        const set = drawMarks(exercise, held ? [held] : [], hand * exercise.stage.opening.width, dice);
        return gradeMarks(exercise, { ...set, marks: set.marks.filter(() => dice() < kept) });
      };
      return [exercise, grade(), grade] as const;
    });
});

// Each case is graded twice, by every habit: a busy laptop takes its time.
vi.setConfig({ testTimeout: 60_000 + 200 * seeded.numRuns });

const settings = { ...seeded, numRuns: Math.ceil(seeded.numRuns / 4), endOnFailure: true };

describe("whatever is marked", () => {
  it("a claim has odds from 20 to a million, and two asked marks or more, each at most once", () => {
    fc.assert(
      fc.property(anyGraded, ([exercise, { habits }]) => {
        expect(new Set(habits.map(({ id }) => id)).size).toBe(habits.length);
        for (const { id, odds, marks, amount } of habits) {
          expect(HABITS.some((habit) => habit.id === id)).toBe(true);
          expect(odds).toBeGreaterThanOrEqual(20);
          expect(odds).toBeLessThanOrEqual(1e6);
          expect(marks.length).toBeGreaterThanOrEqual(2);
          expect(marks.filter((name) => !exercise.task.marks.includes(name))).toEqual([]);
          const fitted = id === "too-shallow" || id === "too-deep";
          expect(amount !== null).toBe(fitted);
          if (amount !== null) expect(id === "too-deep" ? amount > 1 : amount > 0 && amount < 1).toBe(true);
        }
      }),
      settings,
    );
  });

  it("claims come strongest first", () => {
    fc.assert(
      fc.property(anyGraded, ([, { habits }]) => {
        const odds = habits.map((habit) => habit.odds);
        expect(odds).toEqual([...odds].sort((a, b) => b - a));
      }),
      settings,
    );
  });

  it("a habit shown at a mark has a place, and is claimed or put as a question", () => {
    fc.assert(
      fc.property(anyGraded, ([, { habits, marks }]) => {
        for (const mark of marks) {
          expect(mark.habitPlace === null).toBe(mark.habit === null);
          if (mark.habit === null) continue;
          expect(mark.habitPlace?.every(Number.isFinite)).toBe(true);
          const claimed = habits.some(({ id, marks: named }) => id === mark.habit && named.includes(mark.point));
          const within = mark.offMm !== null && mark.offMm <= mark.toleranceMm;
          if (!claimed) expect(within).toBe(false);
          if (!within) expect(mark.feedback.includes("Could it be this?")).toBe(!claimed);
        }
      }),
      settings,
    );
  });

  it("the same marks are graded the same", () => {
    fc.assert(
      fc.property(anyGraded, ([, grade, again]) => {
        expect(again()).toEqual(grade);
      }),
      settings,
    );
  });

  it("no figure is lost, and no word either, wherever the marks lie", () => {
    const far = fc.array(fc.tuple(real(-1e6, 1e6), real(-1e6, 1e6)), { minLength: 60, maxLength: 60 });
    fc.assert(
      fc.property(anyTask, far, (exercise, places) => {
        const set = markAll(exercise, (_, i) => places[i % places.length] as [number, number]);
        const grade = gradeMarks(exercise, set);
        expect(grade.marks.length).toBe(askedPoints(exercise).length);
        for (const { odds } of grade.habits) expect(Number.isFinite(odds)).toBe(true);
        expect(JSON.stringify(grade)).not.toMatch(/NaN|undefined|Infinity/);
      }),
      settings,
    );
  });
});
