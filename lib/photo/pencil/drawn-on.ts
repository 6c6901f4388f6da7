import type { Exercise } from "../../exercise/exercise";
import type { ProjectedPoint } from "../../exercise/exercise-points";
import { HABITS } from "../../habits/all-habits";
import { askedPoints, type Observation } from "../../habits/asked";
import { type Hypothesis, predictionsOf } from "../../habits/hypothesis";
import type { PicturePoint } from "../../stage/frame";

/** A wall stands on the wall before it: so many walls in a row are followed. */
const PASSES = 4;

/**
 * Where a wrong idea leads when every point is drawn on from the student's own points before it, as on paper it is: wall after
 * wall, and every top that the idea leaves alone over its own foot, as high as things look there. Picture metres.
 */
export function drawnOn(
  exercise: Exercise,
  points: ReadonlyMap<string, ProjectedPoint>,
  perfect: readonly Observation[],
  { id, amount, variant, places }: Hypothesis,
): readonly PicturePoint[] {
  const own: Exercise = { ...exercise, task: { ...exercise.task, goOnFrom: "own" } };
  const habit = HABITS.find((one) => one.id === id);
  let drawn = standing(exercise, perfect, places);
  if (!habit) return drawn;
  for (let pass = 0; pass < PASSES; pass++) {
    const marks = perfect.map((one, i) => ({ ...one, mark: drawn[i] ?? one.target }));
    const led = askedPoints(own, points, marks).map((asked, i) => {
      if (!habit.applies(asked)) return null;
      const predicted = predictionsOf(habit, asked, amount).find((one) => one.variant === variant);
      return predicted?.at.every(Number.isFinite) ? predicted.at : (places[i] ?? null);
    });
    drawn = standing(exercise, perfect, led);
  }
  return drawn;
}

/** Every place that is given, and the true ones for the others; a top without one over its foot, if that has been moved. */
function standing(
  { viewer: { eyeHeight } }: Pick<Exercise, "viewer">,
  perfect: readonly Observation[],
  places: readonly (PicturePoint | null)[],
): readonly PicturePoint[] {
  return perfect.map(({ point, target }, i) => {
    const below = perfect.findIndex(({ point: { name } }) => name === point.over);
    const [moved, was] = [places[below], perfect[below]?.target];
    if (places[i] || !moved || !was) return places[i] ?? target;
    // Heights shrink as the foot comes nearer to the horizon.
    const shrunk = (eyeHeight - moved[1]) / (eyeHeight - was[1]);
    const rise = (target[1] - was[1]) * (Number.isFinite(shrunk) && shrunk > 0 ? shrunk : 1);
    return [moved[0] + target[0] - was[0], moved[1] + rise];
  });
}
