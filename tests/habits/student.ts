import type { Exercise } from "@/lib/exercise/exercise";
import { exercisePoints, type ProjectedPoint } from "@/lib/exercise/exercise-points";
import type { Mark, MarkSet } from "@/lib/exercise/marks";
import { judgeMark, placeShown, standsAt } from "@/lib/grading/judge-mark";
import { HABITS } from "@/lib/habits/all-habits";
import { type Asked, askedPoints, type Observation } from "@/lib/habits/asked";
import { predictionsOf } from "@/lib/habits/hypothesis";
import { project } from "@/lib/perspective/project";
import type { PicturePoint } from "@/lib/stage/frame";

/** One habit as a student holds it: which of its ways, and by how much where it errs by an amount. */
export type Held = { readonly id: string; readonly variant: string; readonly amount: number | null };

/** Numbers between 0 and 1, the same for the same seed. */
export type Dice = () => number;

/** Numerical Recipes' quick generator (from memory): good enough to shake a hand with. */
export function startDice(seed: number): Dice {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return (state + 0.5) / 2 ** 32;
  };
}

/** A number of the normal distribution, by Box and Muller's formula. */
function gauss(dice: Dice): number {
  return Math.sqrt(-2 * Math.log(dice())) * Math.cos(2 * Math.PI * dice());
}

/**
 * A student's marks: each where the habits held put it from what is on the sheet by then (the student's own marks where
 * the drawing goes on from them), or in its true place; then moved by a hand of `sigma` picture metres each way. Where
 * two habits have an idea of one place the student follows either.
 */
export function drawMarks(exercise: Exercise, held: readonly Held[], sigma: number, dice: Dice): MarkSet {
  const points = exercisePoints(exercise);
  const seen: Observation[] = [];
  const marks: Mark[] = [];
  for (const name of exercise.task.marks) {
    const point = points.get(name);
    if (!point?.picture) continue;
    const target = targetOf(exercise, points, point, marks);
    const asked = askedPoints(exercise, points, [...seen, { point, mark: target, target, toleranceMm: 1 }]).at(-1);
    if (!asked) continue;
    const ideas = ideasAt(asked, held);
    const meant = ideas[Math.floor(dice() * ideas.length)] ?? target;
    const made = shake(exercise, point, meant, sigma, dice);
    marks.push(made.mark);
    seen.push({ point, mark: made.at, target, toleranceMm: 1 });
  }
  return { format: "plasterline.marks/1", exercise: exercise.id, marks };
}

/** Where the point truly belongs on this sheet: over the student's own foot where the drawing goes on from it. */
function targetOf(
  exercise: Exercise,
  points: ReadonlyMap<string, ProjectedPoint>,
  point: ProjectedPoint,
  marks: readonly Mark[],
): PicturePoint {
  const picture = point.picture as PicturePoint;
  if (exercise.task.goOnFrom !== "own" || exercise.task.kind !== "plan-to-picture") return picture;
  const foot = points.get(point.over ?? "");
  const mark = marks.find((one) => one.point === point.over);
  const own = foot && mark ? { point: foot, at: mark.at as PicturePoint } : null;
  return judgeMark(exercise, point, picture, own, exercise.scaleRatio).target;
}

function ideasAt(asked: Asked, held: readonly Held[]): readonly PicturePoint[] {
  return held.flatMap(({ id, variant, amount }) => {
    const habit = HABITS.find((one) => one.id === id);
    if (!habit?.applies(asked)) return [];
    return predictionsOf(habit, asked, amount).flatMap((one) => (one.variant === variant ? [one.at] : []));
  });
}

/** A mark near a place of the picture; of a plan, the place there that looks so. Drawn again where it would show no place. */
function shake(exercise: Exercise, point: ProjectedPoint, [X, Z]: PicturePoint, sigma: number, dice: Dice) {
  for (;;) {
    const at: PicturePoint = [X + sigma * gauss(dice), Z + sigma * gauss(dice)];
    if (exercise.task.kind === "plan-to-picture") return { at, mark: { point: point.name, at } };
    const place = placeShown(exercise, point, at);
    if (!place.found) continue;
    const read: Mark = { point: point.name, at: [place.at[0], place.at[1]] };
    const again = project(exercise.viewer, standsAt(exercise, point, [place.at[0], place.at[1]]));
    if (again.seen) return { at, mark: read };
  }
}
