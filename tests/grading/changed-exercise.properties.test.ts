import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkSense } from "@/lib/exercise/check-sense";
import { readExercise } from "@/lib/exercise/read-exercise";
import { gradeMarks } from "@/lib/grading/grade-marks";
import { writeTideOffice } from "../fixtures/tide-office";
import { seeded } from "../seeded";

/** Every place of a number in the tide office. */
function numbers(value: unknown, here = ""): readonly string[] {
  if (typeof value === "number") return [here];
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => numbers(inner, `${here}/${key}`));
}
/** Figures that are not finite, which JSON would print as null. */
function endless(value: unknown): readonly unknown[] {
  if (typeof value === "number") return Number.isFinite(value) ? [] : [value];
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(endless) : [];
}

const places = numbers(writeTideOffice());

const size = fc.oneof(fc.double({ min: -40, max: 40, noNaN: true }), fc.constantFrom(0, 1e-12, 1e-6, 8, 14, -36, 3000));
const coordinate = fc.oneof(
  fc.double({ min: -10, max: 10, noNaN: true }),
  fc.constantFrom(0, 2.4384, 2.4384000000001, -10.9728, 1e12, -1e12),
);

describe("any exercise that makes sense", () => {
  it.each(["plan-to-picture", "picture-to-plan"])(
    "can be graded, %s, whatever the marks, in finite figures and words",
    (kind) => {
      let graded = 0;
      fc.assert(
        fc.property(
          fc.array(fc.tuple(fc.constantFrom(...places), size), { maxLength: 4 }),
          fc.constantFrom("true", "own"),
          fc.infiniteStream(fc.tuple(coordinate, coordinate)),
          (changes, goOnFrom, hand) => {
            const task = { kind, goOnFrom };
            const reading = readExercise(JSON.stringify(writeTideOffice(["/task", task], ...changes)));
            if (!reading.ok || checkSense(reading.exercise).some(({ weight }) => weight === "fault")) return;
            graded += 1;
            const marks = reading.exercise.task.marks.map((point) => ({ point, at: hand.next().value }));
            const grade = gradeMarks(reading.exercise, {
              format: "plasterline.marks/1",
              exercise: "tide-office",
              marks,
            });
            expect(endless(grade)).toEqual([]);
            expect(grade.score).toBeGreaterThanOrEqual(0);
            for (const { feedback } of grade.marks) expect(feedback).not.toMatch(/NaN|undefined|Infinity|null/);
          },
        ),
        { ...seeded, numRuns: Math.ceil(seeded.numRuns / 4) },
      );
      expect(graded).toBeGreaterThan(seeded.numRuns / 20);
    },
  );
});
