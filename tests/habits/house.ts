import type { Exercise } from "@/lib/exercise/exercise";
import { exercisePoints, type ProjectedPoint } from "@/lib/exercise/exercise-points";
import { readExerciseJson } from "@/lib/exercise/read-exercise";
import { HABITS } from "@/lib/habits/all-habits";
import { type Asked, askedPoints, type Observation } from "@/lib/habits/asked";
import type { FittedHabit, Habit } from "@/lib/habits/habit";
import { predictionsOf } from "@/lib/habits/hypothesis";
import type { PicturePoint } from "@/lib/stage/frame";

export type HouseChange = {
  readonly stage?: object;
  readonly viewer?: object;
  readonly plan?: object;
  readonly task: { readonly marks: readonly string[]; readonly [field: string]: unknown };
};

/**
 * A house to reckon in by hand, metres: an opening 8 wide and 5 high, a level floor 8 deep, the eye 8 before the plaster
 * line, 2 up, on the centre line. So s = 8 / (8 + y), X = x s, Z = 2 + (z - 2) s, and the back wall's foot is at Z_b = 1.
 * Paper at 1:20: a metre of the picture is 50 mm.
 */
export function house({ stage, viewer, plan, task }: HouseChange): Exercise {
  const reading = readExerciseJson({
    format: "plasterline.exercise/1",
    id: "house",
    title: "A house to reckon in",
    unit: "sets",
    level: 1,
    units: "m",
    scale: "1:20",
    stage: { opening: { width: 8, height: 5 }, depth: 8, apron: 2, ...stage },
    viewer: { distance: 8, eyeHeight: 2, ...viewer },
    plan: plan ?? {},
    task: { kind: "plan-to-picture", ...task },
  });
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.exercise;
}

/** A point of the house with its picture, or the test fails. */
export function seenPoint(exercise: Exercise, name: string): ProjectedPoint & { readonly picture: PicturePoint } {
  const point = exercisePoints(exercise).get(name);
  if (!point?.picture) throw new Error(`${name} is not seen.`);
  return { ...point, picture: point.picture };
}

/** A point as it is asked, after the marks before it: true ones, but for those said. */
export function askedFor(exercise: Exercise, name: string, drawn: Readonly<Record<string, PicturePoint>> = {}): Asked {
  const { marks } = exercise.task;
  const seen = marks.slice(0, marks.indexOf(name) + 1).map((one): Observation => {
    const point = seenPoint(exercise, one);
    return { point, mark: drawn[one] ?? point.picture, target: point.picture, toleranceMm: 2 };
  });
  const asked = askedPoints(exercise, exercisePoints(exercise), seen).at(-1);
  if (asked?.point.name !== name) throw new Error(`${name} is not asked.`);
  return asked;
}

export function habitOf(id: string): Habit | FittedHabit {
  const habit = HABITS.find((one) => one.id === id);
  if (!habit) throw new Error(`There is no habit ${id}.`);
  return habit;
}

/** Where a habit puts a point, by variant; nothing where it has nothing to say. */
export function placesOf(
  id: string,
  asked: Asked,
  amount: number | null = null,
): Readonly<Record<string, PicturePoint>> {
  const habit = habitOf(id);
  if (!habit.applies(asked)) return {};
  return Object.fromEntries(predictionsOf(habit, asked, amount).map(({ variant, at }) => [variant, at]));
}
