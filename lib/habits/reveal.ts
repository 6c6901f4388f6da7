import type { Exercise } from "../exercise/exercise";
import type { ProjectedPoint } from "../exercise/exercise-points";
import { exercisePoints } from "../exercise/exercise-points";
import { tolerances } from "../exercise/tolerance";
import { distance } from "../geometry/vector";
import { toPaperMm } from "../measure/scale";
import type { PicturePoint } from "../stage/frame";
import { askedPoints, type Observation } from "./asked";
import { cannotBeTold, type Hypothesis, hypotheses, MARKS_NEEDED } from "./hypothesis";

/** The hand a habit must show through, as a share of the opening's width: 3 mm on a 20-inch sheet. */
export const HAND_SHARE = 0.006;

/**
 * Sum of squared distances, in sigmas of that hand, between a habit's places and the true ones, or another habit's, from
 * which the classifier tells them apart nearly always: odds of 20 (or 3), with room for the hand to go against it.
 */
const TELLS_FROM_TRUTH = 32;
const TELLS_FROM_HABIT = 24;
/** A fitted amount pays for its freedom, so it has farther to go. */
const FITTED_TELLS_FROM_TRUTH = 44;
const FITTED_TELLS_FROM_HABIT = 40;

/** Distances beyond this many sigmas count no more: the mark is plainly somewhere else. */
const PLAINLY = 4.5;

/** The ids of the habits that an exercise's marks can tell from the truth and from one another. */
export function revealedHabits(exercise: Exercise): readonly string[] {
  return [...new Set(revealedWays(exercise).map(({ id }) => id))];
}

/** The same with every way of holding them that can be told: which edge of the rule, whose vanishing point, how much. */
export function revealedWays(exercise: Exercise): readonly Hypothesis[] {
  const points = exercisePoints(exercise);
  const perfect = perfectMarks(exercise, points);
  const all = hypotheses(askedPoints(exercise, points, perfect), perfect, exercise.scaleRatio).map((one) =>
    exercise.task.goOnFrom === "own" ? { ...one, places: withoutOwnTops(one.places, perfect) } : one,
  );
  const sigmaMm = toPaperMm(HAND_SHARE * exercise.stage.opening.width, exercise.scaleRatio);
  const apart = (a: readonly (PicturePoint | null)[], b: readonly (PicturePoint | null)[]) =>
    perfect.reduce((sum, { target }, i) => {
      const sigmas = toPaperMm(distance(a[i] ?? target, b[i] ?? target), exercise.scaleRatio) / sigmaMm;
      return sum + Math.min(sigmas, PLAINLY) ** 2;
    }, 0);
  const truth = perfect.map(() => null);
  return all.filter((one) => {
    const fitted = one.amount !== null;
    const informative = one.places.filter((place) => place !== null).length;
    if (informative < MARKS_NEEDED) return false;
    if (apart(one.places, truth) < (fitted ? FITTED_TELLS_FROM_TRUTH : TELLS_FROM_TRUTH)) return false;
    // A fixed habit need not fear a fitted amount, which pays for its freedom.
    const rivals = all.filter(({ id, amount }) => id !== one.id && (fitted || amount === null));
    return rivals.every(
      (rival) =>
        apart(one.places, rival.places) >= (fitted ? FITTED_TELLS_FROM_HABIT : TELLS_FROM_HABIT) ||
        cannotBeTold(one, rival, perfect, exercise.scaleRatio),
    );
  });
}

/** Marks at every true place: what the habits' predictions are laid against. */
export function perfectMarks(exercise: Exercise, points: ReadonlyMap<string, ProjectedPoint>): readonly Observation[] {
  const allowed = tolerances(exercise, points);
  return exercise.task.marks.flatMap((name) => {
    const point = points.get(name);
    const toleranceMm = allowed.get(name);
    if (!point?.picture || toleranceMm === undefined) return [];
    return [{ point, mark: point.picture, target: point.picture, toleranceMm }];
  });
}

/**
 * Where the drawing goes on from the student's own marks, a top over a foot that the habit has moved is right over that
 * foot (or wrong in a way that depends on it), and is not counted on to tell the habit a second time.
 */
function withoutOwnTops(
  places: readonly (PicturePoint | null)[],
  marks: readonly Observation[],
): readonly (PicturePoint | null)[] {
  const moved = new Set(marks.flatMap(({ point }, i) => (places[i] ? [point.name] : [])));
  return places.map((place, i) => (moved.has(marks[i]?.point.over ?? "") ? null : place));
}
