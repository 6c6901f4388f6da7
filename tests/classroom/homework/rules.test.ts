import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkExercise } from "@/lib/classroom/homework/check-exercise";
import { dueAt, isLate, isReleased, isSetTo } from "@/lib/classroom/homework/due";
import { ENGINE_VERSION } from "@/lib/classroom/homework/engine-version";
import { exerciseFor } from "@/lib/classroom/homework/exercise-for";
import { countingOf } from "@/lib/classroom/homework/receipt";
import { variantOrder } from "@/lib/classroom/homework/variant-order";
import { loadExercises } from "@/lib/exercise/load-exercises";
import { readExercise } from "@/lib/exercise/read-exercise";
import { gradeMarks } from "@/lib/grading/grade-marks";
import { AT, marksOf, WALLS, wallsExercise } from "./desk";

const NOON = AT("12:00").toISOString();
const EVENING = AT("18:00").toISOString();
const terms = (due_at: string | null, excused: 0 | 1 = 0, assigned: 0 | 1 = 0) => ({ due_at, excused, assigned });
const homework = (feedback: "at-once" | "after-due", due_at: string | null, to_whom: "all" | "some" = "all") => ({
  feedback,
  due_at,
  to_whom,
});

describe("the rules of homework", () => {
  it.each([
    ["the date of all", NOON, undefined, NOON],
    ["no date", null, undefined, null],
    ["a later date of one's own", NOON, terms(EVENING), EVENING],
    ["a date of one's own where all have none", null, terms(EVENING), EVENING],
    ["terms without a date", NOON, terms(null, 1), NOON],
  ])("hold a student to %s", (_, due, own, expected) => {
    expect(dueAt(homework("at-once", due), own)).toBe(expected);
  });

  it.each([
    [NOON, "11:59", false],
    [NOON, "12:00", false],
    [NOON, "12:01", true],
    [null, "23:59", false],
  ])("due at %s, handed in at %s: late %s", (due, clock, late) => {
    expect(isLate(due, AT(clock))).toBe(late);
  });

  it.each([
    ["at-once", NOON, undefined, "08:00", true],
    ["after-due", NOON, undefined, "12:00", false],
    ["after-due", NOON, undefined, "12:01", true],
    ["after-due", NOON, terms(EVENING), "12:01", false],
    ["after-due", NOON, terms(EVENING), "18:01", true],
    ["after-due", null, undefined, "23:59", false],
  ] as const)("feedback %s, due %s, own terms %o, at %s: shown %s", (feedback, due, own, clock, shown) => {
    expect(isReleased(homework(feedback, due), own, AT(clock))).toBe(shown);
  });

  it.each([
    ["all", undefined, true],
    ["all", terms(null, 1), true],
    ["some", undefined, false],
    ["some", terms(null), false],
    ["some", terms(null, 0, 1), true],
  ] as const)("set to %s, terms %o: set to the student %s", (to_whom, own, expected) => {
    expect(isSetTo(homework("at-once", NOON, to_whom), own)).toBe(expected);
  });

  it.each([
    [[], "best", undefined],
    [[40, 90, 60], "best", 1],
    [[40, 90, 60], "last", 2],
    [[90, 90], "best", 1],
    [[null, 0], "best", 1],
    [[50, null], "best", 0],
    [[50, null], "last", 1],
  ] as const)("of scores %o by %s the one at %s counts", (scores, counts, expected) => {
    const rows = scores.map((score, at) => ({ score, at }));
    expect(countingOf(rows, counts)?.at).toBe(expected);
  });

  it("say the version of the package that grades", () => {
    expect(ENGINE_VERSION).toBe(JSON.parse(readFileSync("package.json", "utf8")).version);
  });
});

const item = { id: "item", source: "own" as const, unit: null, level: null, exercise: WALLS };
const plain = { strictness: null, hints: "allowed" as const, feedback: "at-once" as const };

describe("the exercise that a student gets", () => {
  it.each([
    [plain, {}],
    [{ ...plain, strictness: "drafted" as const }, { strictness: "drafted" }],
    [{ ...plain, hints: "none" as const }, { hints: "none" }],
    [{ ...plain, feedback: "after-due" as const }, { goOnFrom: "own" }],
  ])("with %o is the one set with the task %o, and reads back from its text", (set, changed) => {
    const given = exerciseFor(item, set, "wim");
    expect(given?.exercise).toEqual({ ...wallsExercise, task: { ...wallsExercise.task, ...changed } });
    expect(readExercise(given?.text ?? "")).toEqual({ ok: true, exercise: given?.exercise });
  });

  it("is a variant of the unit and level, the same each time, and another for nearly every student", () => {
    const variants = { ...item, source: "variant" as const, unit: "floor", level: 1, exercise: null };
    const of = (member: string) => exerciseFor(variants, { ...plain, hints: "none" }, member);
    const wim = of("wim");
    expect(wim?.exercise).toMatchObject({ unit: "floor", level: 1, task: { hints: "none" } });
    expect(of("wim")?.text).toBe(wim?.text);
    expect(of("tess")?.exercise.id).not.toBe(wim?.exercise.id);
  });

  it("is nothing where what was set cannot be read", () => {
    for (const exercise of [null, "", "[]", "{", '{"task": {}}'])
      expect(exerciseFor({ ...item, exercise }, plain, "wim")).toBeNull();
    expect(exerciseFor({ ...item, source: "variant", unit: "attic", level: 1 }, plain, "wim")).toBeNull();
  });

  it("is sound and perfect marks score 100, whichever of the course is set and however strictly", async () => {
    const strict = { strictness: "drafted", hints: "none", feedback: "after-due" } as const;
    const course = (await loadExercises("exercises")).flatMap((entry) => (entry.ok ? [entry] : []));
    expect(course.length).toBeGreaterThan(30);
    for (const { file } of course) {
      const exercise = readFileSync(`exercises/${file}`, "utf8");
      const given = exerciseFor({ ...item, exercise }, strict, "wim");
      expect([file, given && checkExercise(given.text)]).toEqual([file, { ok: true, exercise: given?.exercise }]);
      if (!given) continue;
      const grade = gradeMarks(given.exercise, marksOf(given.exercise));
      expect([file, grade.score]).toEqual([file, 100]);
    }
  });

  it("spreads seeds: a thousand students share fewer than a lot drawn by chance would twice over", () => {
    const of = (i: number) => variantOrder({ id: "an-item", unit: "walls", level: 2 }, `member-${i}`).seed;
    const seeds = Array.from({ length: 1000 }, (_, i) => of(i));
    // Birthdays: 1000 draws of a million meet about 0.5 times; ten would be a broken hash.
    expect(new Set(seeds).size).toBeGreaterThan(990);
    const half = seeds.filter((seed) => seed < 500_000).length;
    // Four standard deviations of a fair coin thrown a thousand times (sqrt(250) = 15.8).
    expect(Math.abs(half - 500)).toBeLessThan(64);
  });

  it("has a seed that its identifier can write, whoever asks", () => {
    fc.assert(
      fc.property(fc.string(), fc.string(), (id, member) => {
        const { seed } = variantOrder({ id, unit: "walls", level: 2 }, member);
        return Number.isInteger(seed) && seed >= 0 && seed < 1_000_000;
      }),
      { seed: 20261125 },
    );
  });
});
