import { beforeAll, describe, expect, it } from "vitest";
import { checkSense } from "@/lib/exercise/check-sense";
import type { Exercise } from "@/lib/exercise/exercise";
import { tolerances } from "@/lib/exercise/tolerance";
import { FEWEST_HABITS, generateExercise } from "@/lib/generator/generate-exercise";
import { LEVELS, marksAsked } from "@/lib/generator/levels";
import { measureDifficulty } from "@/lib/generator/measure-difficulty";
import { gradeMarks } from "@/lib/grading/grade-marks";
import { revealedHabits } from "@/lib/habits/reveal";
import { boxesOf, isInside, type Made, makeUnit, PATIENCE_MS, UNITS } from "./made";

type Place = readonly [X: number, Z: number];

/** All that is on the sheet before a mark and after it, worked out here: foot or half-metre ticks, corners of the opening and the back wall, CVP, given and other asked points. */
function othersOnSheet({ exercise, points }: Made, mark: string): readonly Place[] {
  const { stage, viewer, task } = exercise;
  const half = stage.opening.width / 2;
  const step = exercise.units === "m" ? 0.5 : 0.3048;
  const each = Math.floor(half / step + 1e-9);
  const s = viewer.distance / (viewer.distance + stage.depth);
  const back = (x: number, z: number): Place => [
    viewer.offset + (x - viewer.offset) * s,
    viewer.eyeHeight + (z - viewer.eyeHeight) * s,
  ];
  const named = [...task.given, ...task.marks].filter((name) => name !== mark);
  return [
    ...Array.from({ length: 2 * each + 1 }, (_, i): Place => [(i - each) * step, 0]),
    ...[-half, half].flatMap((x): Place[] => [
      [x, 0],
      [x, stage.opening.height],
      back(x, stage.rake * stage.depth),
      back(x, stage.opening.height),
    ]),
    [viewer.offset, viewer.eyeHeight],
    ...named.map((name) => points.get(name)?.picture as Place),
  ];
}

function paperMm([X, Z]: Place, [U, V]: Place, { scaleRatio }: Exercise): number {
  return (Math.hypot(X - U, Z - V) * 1000) / scaleRatio;
}

/** By how much the mean difficulty rises from level to level at least; over few seeds means wander. */
const HARDER = 1.05;

/** Steps of a sight line looked at, and where it ends: just before the point, which may lie on the thing itself. */
const SIGHT_STEPS = 300;
const SIGHT_END = 0.997;

describe.each(UNITS)("%s", (unit) => {
  let made: readonly Made[] = [];
  beforeAll(() => {
    made = makeUnit(unit);
  }, PATIENCE_MS);

  it("gives sound exercises with no mark that is hard to grade", () => {
    const expected = /falls outside the frame of the picture|^no wall uses corner/;
    for (const { name, exercise } of made) {
      const strange = checkSense(exercise).filter(
        ({ message, where }) => !expected.test(message) || where.startsWith("/task"),
      );
      expect(strange, name).toEqual([]);
    }
  });

  it("asks as many marks as the level says, each of them in the frame", () => {
    for (const { name, exercise, points } of made) {
      const [fewest, most] = marksAsked(unit, exercise.level as (typeof LEVELS)[number]);
      expect(exercise.task.marks.length, name).toBeGreaterThanOrEqual(fewest);
      expect(exercise.task.marks.length, name).toBeLessThanOrEqual(most);
      for (const mark of exercise.task.marks) {
        const [X, Z] = points.get(mark)?.picture ?? [Number.NaN, Number.NaN];
        expect(Math.abs(X), `${name} ${mark}`).toBeLessThanOrEqual(exercise.stage.opening.width / 2);
        expect(Z, `${name} ${mark}`).toBeLessThanOrEqual(exercise.stage.opening.height);
      }
    }
  });

  it("makes every mark worth more than its tolerance: left at any other point of the sheet, it is marked down", () => {
    for (const one of made) {
      const allowed = tolerances(one.exercise, one.points);
      for (const mark of one.exercise.task.marks) {
        const at = one.points.get(mark)?.picture as Place;
        const nearest = Math.min(...othersOnSheet(one, mark).map((other) => paperMm(at, other, one.exercise)));
        expect(nearest, `${one.name} ${mark}`).toBeGreaterThanOrEqual(2 * (allowed.get(mark) ?? Number.NaN));
      }
    }
  });

  it("scores less than 100 for a set of marks each left at the nearest other point", () => {
    for (const one of made.filter(({ exercise }) => exercise.task.kind === "plan-to-picture").slice(0, 10)) {
      const marks = one.exercise.task.marks.map((mark) => {
        const truth = one.points.get(mark)?.picture as Place;
        const [at] = [...othersOnSheet(one, mark)].sort(
          (a, b) => paperMm(truth, a, one.exercise) - paperMm(truth, b, one.exercise),
        );
        return { point: mark, at: at as Place };
      });
      const grade = gradeMarks(one.exercise, { format: "plasterline.marks/1", exercise: one.exercise.id, marks });
      for (const { score, point } of grade.marks) expect(score, `${one.name} ${point}`).toBeLessThan(100);
    }
  });

  it("asks no point that something stands before", () => {
    for (const one of made) {
      const boxes = boxesOf(one);
      const { viewer, task } = one.exercise;
      for (const mark of task.marks) {
        const [x, y, z] = one.points.get(mark)?.at ?? [0, 0, 0];
        const hidden = Array.from({ length: SIGHT_STEPS }, (_, i) => ((i + 1) / SIGHT_STEPS) * SIGHT_END).some((t) => {
          const place = [
            viewer.offset + (x - viewer.offset) * t,
            -viewer.distance + (y + viewer.distance) * t,
          ] as const;
          const height = viewer.eyeHeight + (z - viewer.eyeHeight) * t;
          return boxes.some(({ outline, top }) => height < top - 1e-6 && isInside(outline, place));
        });
        expect(hidden, `${one.name} ${mark}`).toBe(false);
      }
    }
  });

  it("can tell two wrong ideas or more", () => {
    for (const { name, exercise } of made)
      expect(revealedHabits(exercise).length, name).toBeGreaterThanOrEqual(FEWEST_HABITS);
  });

  it("is harder on the mean at each level than at the one before", () => {
    const means = LEVELS.map((level) => {
      const values = made
        .filter(({ exercise }) => exercise.level === level)
        .map(({ exercise }) => measureDifficulty(exercise));
      return values.reduce((sum, value) => sum + value, 0) / values.length;
    });
    means.slice(1).forEach((mean, i) => {
      expect(mean, `levels ${i + 1} and ${i + 2}: ${means.map((one) => one.toFixed(1))}`).toBeGreaterThan(
        HARDER * (means[i] as number),
      );
    });
  });

  it("gives the same bytes for the same seed, and others for others", () => {
    for (const { text, exercise } of made.slice(0, 3))
      expect(
        JSON.stringify(generateExercise({ unit, level: exercise.level, seed: Number(exercise.id.split("-").at(-1)) })),
      ).toBe(text);
    expect(new Set(made.map(({ text }) => text)).size).toBe(made.length);
  });
});

describe("a raked stage, at level 4", () => {
  it(
    "can tell who forgets that the floor rises",
    () => {
      const raked = makeUnit("stage").filter(({ exercise }) => exercise.level === 4);
      expect(raked.length).toBeGreaterThan(0);
      for (const { name, exercise } of raked) expect(revealedHabits(exercise), name).toContain("flat-floor");
    },
    PATIENCE_MS,
  );
});
