import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { gradeMarks } from "@/lib/grading/grade-marks";
import { errorSeries } from "@/lib/progress/error-series";
import { habitHistory } from "@/lib/progress/habit-history";
import { makeRecord } from "@/lib/progress/make-record";
import { type CourseItem, nextExercise } from "@/lib/progress/next-exercise";
import { readRecord } from "@/lib/progress/read-record";
import { type AttemptRecord, inOrder } from "@/lib/progress/record";
import { skillStates } from "@/lib/progress/skill-states";
import { SKILLS } from "@/lib/progress/skills";
import { summarise } from "@/lib/progress/summarise";
import { LEAST_GUESS, MASTERED_AT, MOST_GUESS } from "@/lib/progress/trace-skill";
import { anyExercise, markAll, moved } from "../grading/any-exercise";
import { real } from "../perspective/arbitraries";
import { seeded } from "../seeded";
import { aRecord, day, marksFor } from "./records";

const anySkill = fc.constantFrom("depth-by-eye", "height", "ray-to-cvp", "spike-marks");
const CATALOGUE: readonly CourseItem[] = ["one", "two", "three"].map((id, i) => ({
  id,
  title: id,
  skills: SKILLS.slice(i, i + 3).map((skill) => skill.id),
}));

/** A record of a few marks, on one of few days, so that several fall on one moment. */
const anyRecord: fc.Arbitrary<AttemptRecord> = fc
  .record({
    exercise: fc.constantFrom("one", "two", "three"),
    on: fc.integer({ min: 0, max: 3 }),
    marks: fc.array(fc.tuple(anySkill, fc.string({ unit: fc.constantFrom(..."+udo"), minLength: 1, maxLength: 4 }))),
    habit: fc.constantFrom("plan-depth", "too-deep"),
    claimed: fc.boolean(),
  })
  .map(({ exercise, on, marks, habit, claimed }) =>
    aRecord(
      exercise,
      day(on),
      marks.flatMap(([skill, signs]) => marksFor(skill, signs)),
      { habits: claimed ? [{ id: habit, odds: 30, marks: [], amount: null }] : [], tells: [habit] },
    ),
  );
const anyRecords = fc.array(anyRecord, { maxLength: 8 });
const NOW = new Date(day(20));

describe("progress over any records", () => {
  it("does not depend on the order in which records come, those of one moment least of all", () => {
    const shuffled = anyRecords.chain((records) =>
      fc.tuple(fc.constant(records), fc.shuffledSubarray(records, { minLength: records.length })),
    );
    fc.assert(
      fc.property(shuffled, ([records, others]) => {
        const all = (each: readonly AttemptRecord[]) => [
          skillStates(each),
          nextExercise(each, CATALOGUE, NOW),
          summarise(each, NOW),
          errorSeries(each),
          habitHistory(each, NOW),
        ];
        expect(all(others)).toEqual(all(records));
      }),
      seeded,
    );
  });

  it("puts every skill in one list, with a probability between 0 and 1, mastered ones above the line", () => {
    fc.assert(
      fc.property(anyRecords, (records) => {
        const { mastered, shaky, notBegun } = summarise(records, NOW);
        const ids = [...mastered, ...shaky, ...notBegun].map(({ id }) => id);
        expect(new Set(ids).size).toBe(ids.length);
        expect(ids).toEqual(expect.arrayContaining(SKILLS.map(({ id }) => id)));
        for (const { probability } of [...mastered, ...shaky, ...notBegun]) {
          expect(probability).toBeGreaterThan(0);
          expect(probability).toBeLessThan(1);
        }
        expect(mastered.every(({ probability }) => probability >= MASTERED_AT)).toBe(true);
        expect(shaky.every(({ probability }) => probability < MASTERED_AT)).toBe(true);
      }),
      seeded,
    );
  });

  it("is never lowered in any skill by one more exercise done right", () => {
    fc.assert(
      fc.property(anyRecords, anySkill, fc.integer({ min: 1, max: 5 }), (records, skill, count) => {
        const more = aRecord("one", day(10), marksFor(skill, "+".repeat(count)));
        const before = new Map(skillStates(records).map((state) => [state.skill.id, state.probability]));
        for (const { skill: each, probability } of skillStates([...records, more]))
          expect(probability).toBeGreaterThanOrEqual((before.get(each.id) ?? 0) - 1e-12);
      }),
      seeded,
    );
  });

  it("always has an exercise of the catalogue next, with a reason in a sentence", () => {
    fc.assert(
      fc.property(anyRecords, fc.integer({ min: -5, max: 60 }), (records, n) => {
        const next = nextExercise(records, CATALOGUE, new Date(day(n)));
        expect(CATALOGUE.map(({ id }) => id)).toContain(next?.exercise);
        expect(next?.reason).toMatch(/^[A-Z].*\.$/);
      }),
      seeded,
    );
  });
});

describe("makeRecord over any exercise and any hand", () => {
  it("keeps finite numbers, luck within its bounds, and comes back whole from JSON", () => {
    const drawings = fc.tuple(anyExercise("own"), real(0, 40), real(0, 2 * Math.PI));
    fc.assert(
      fc.property(drawings, ([exercise, mm, angle]) => {
        const marks = markAll(exercise, (point, i) => moved(point.picture, mm, angle + i, exercise));
        const record = makeRecord(exercise, gradeMarks(exercise, marks), day(0));
        expect(record.marks).toHaveLength(exercise.task.marks.length);
        for (const { evidence, within } of record.marks)
          for (const { guess, right } of evidence) {
            expect(guess).toBeGreaterThanOrEqual(LEAST_GUESS);
            expect(guess).toBeLessThanOrEqual(MOST_GUESS);
            if (within) expect(right).toBe(true);
          }
        expect(readRecord(JSON.parse(JSON.stringify(record)))).toEqual({ ok: true, record });
        expect(inOrder([record])).toEqual([record]);
      }),
      { ...seeded, numRuns: Math.ceil(seeded.numRuns / 10) },
    );
  });
});
