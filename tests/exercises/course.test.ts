import { describe, expect, it } from "vitest";
import { checkSense } from "@/lib/exercise/check-sense";
import { UNITS } from "@/lib/exercise/exercise";
import { exercisePoints } from "@/lib/exercise/exercise-points";
import { tolerances } from "@/lib/exercise/tolerance";
import { distance } from "@/lib/geometry/vector";
import { HABITS } from "@/lib/habits/all-habits";
import { revealedHabits } from "@/lib/habits/reveal";
import { toPaperMm } from "@/lib/measure/scale";
import { SKILLS } from "@/lib/progress/skills";
import { SHIPPED } from "./shipped";

/** Exercises with this many marks or more must be able to show a habit. */
const ENOUGH_MARKS = 6;
/** Two asked points must lie this many times the larger tolerance apart, or one mark could stand for the other. */
const TOLERANCES_APART = 2;

const NUMBERED = /^([a-z]+)\/(\d\d)-([a-z0-9-]+)\.json$/;

describe("the course as a whole", () => {
  it("has thirty exercises or more, and every unit", () => {
    expect(SHIPPED.length).toBeGreaterThanOrEqual(30);
    expect(new Set(SHIPPED.map(({ exercise }) => exercise.unit))).toEqual(new Set(UNITS));
  });

  it("gives every exercise an id and a title of its own", () => {
    expect(new Set(SHIPPED.map(({ exercise }) => exercise.id)).size).toBe(SHIPPED.length);
    expect(new Set(SHIPPED.map(({ exercise }) => exercise.title)).size).toBe(SHIPPED.length);
  });

  it.each(SHIPPED)("files $file under its unit, by its number and its id", ({ file, exercise }) => {
    const [, folder, , id] = NUMBERED.exec(file) ?? [];
    expect([folder, id]).toEqual([exercise.unit, exercise.id]);
  });

  it.each(UNITS)("numbers the sheets of %s from 1 without a gap, the levels never falling", (unit) => {
    const sheets = SHIPPED.filter(({ folder }) => folder === unit);
    expect(sheets.map(({ file }) => Number(NUMBERED.exec(file)?.[2]))).toEqual(sheets.map((_, i) => i + 1));
    const levels = sheets.map(({ exercise }) => exercise.level);
    expect(levels).toEqual([...levels].sort((a, b) => a - b));
    expect(new Set(levels).size).toBeGreaterThan(1);
  });

  it("begins with reading the frame", () => {
    const floor = SHIPPED.filter(({ folder }) => folder === "floor").map(({ exercise }) => exercise.id);
    expect(floor.slice(0, 3)).toEqual(["reading-the-frame", "halves-and-quarters", "points-on-the-floor"]);
  });

  it("trains every skill in two exercises or more, and no others", () => {
    const trained = SHIPPED.flatMap(({ exercise }) => exercise.skills);
    const known = SKILLS.map(({ id }) => id);
    expect(trained.filter((skill) => !known.includes(skill))).toEqual([]);
    expect(known.filter((id) => trained.filter((skill) => skill === id).length < 2)).toEqual([]);
  });

  it("uses every setting a teacher may choose", () => {
    const tasks = SHIPPED.map(({ exercise }) => exercise.task);
    expect(tasks.filter(({ dimensions }) => dimensions === "rule").length).toBeGreaterThanOrEqual(3);
    expect(tasks.filter(({ goOnFrom }) => goOnFrom === "own").length).toBeGreaterThanOrEqual(3);
    expect(tasks.filter(({ strictness }) => strictness === "drafted").length).toBeGreaterThanOrEqual(1);
    const unaided = SHIPPED.filter(({ exercise }) => exercise.task.hints === "none");
    expect(unaided.map(({ exercise }) => exercise.level)).toEqual([5, 5]);
    const metric = SHIPPED.filter(({ exercise }) => exercise.units === "m").length / SHIPPED.length;
    expect(metric).toBeGreaterThan(0.3);
    expect(metric).toBeLessThan(0.4);
  });

  it("reads back in its own unit and nowhere else", () => {
    for (const { exercise } of SHIPPED)
      expect(exercise.task.kind === "picture-to-plan", exercise.id).toBe(exercise.unit === "reading");
  });

  it("can show every habit in two exercises or more", () => {
    const shown = SHIPPED.flatMap(({ exercise }) => revealedHabits(exercise));
    expect(HABITS.map(({ id }) => id).filter((id) => shown.filter((one) => one === id).length < 2)).toEqual([]);
  });
});

describe.each(SHIPPED)("$file", ({ exercise }) => {
  const points = exercisePoints(exercise);

  it("makes sense, and every mark can be graded", () => {
    const findings = checkSense(exercise);
    expect(findings.filter(({ weight }) => weight === "fault")).toEqual([]);
    expect(findings.filter(({ where }) => where.startsWith("/task"))).toEqual([]);
    expect(findings.filter(({ where }) => where.startsWith("/plan/stairs"))).toEqual([]);
  });

  it("asks for places that cannot be taken for one another", () => {
    const allowed = tolerances(exercise, points);
    const asked = exercise.task.marks.map((name) => ({
      name,
      at: points.get(name)?.picture ?? [Number.NaN, Number.NaN],
      mm: allowed.get(name) ?? Number.NaN,
    }));
    const tooNear = asked.flatMap((a, i) =>
      asked
        .slice(0, i)
        .filter(
          (b) => !(toPaperMm(distance(a.at, b.at), exercise.scaleRatio) >= TOLERANCES_APART * Math.max(a.mm, b.mm)),
        )
        .map((b) => `${a.name} and ${b.name}`),
    );
    expect(tooNear).toEqual([]);
  });

  it("asks a foot before the top over it, unless the foot is never asked", () => {
    const { marks } = exercise.task;
    for (const name of marks) {
      const foot = points.get(name)?.over;
      if (foot && marks.includes(foot)) expect(marks.indexOf(foot), name).toBeLessThan(marks.indexOf(name));
    }
  });

  it("has enough marks to tell a habit, and can show one", () => {
    expect(exercise.task.marks.length).toBeGreaterThanOrEqual(ENOUGH_MARKS);
    expect(exercise.task.marks.length).toBeLessThanOrEqual(16);
    if (exercise.unit === "sets") expect(exercise.task.marks.length).toBeGreaterThanOrEqual(10);
    expect(revealedHabits(exercise)).not.toEqual([]);
  });
});
