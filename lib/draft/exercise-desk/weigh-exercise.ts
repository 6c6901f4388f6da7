import type { Exercise } from "../../exercise/exercise";
import { exercisePoints } from "../../exercise/exercise-points";
import { tolerances } from "../../exercise/tolerance";
import { type PaperWorth, paperWorth } from "../../perspective/foreshortening";
import { floorHeight } from "../../stage/stage";

/** How hard an exercise is, in figures that an author can weigh. */
export type Weighed = {
  readonly marks: number;
  /** The mark that is allowed the least, millimetres of paper; null where none is seen. */
  readonly finest: { readonly point: string; readonly toleranceMm: number } | null;
  /** What a millimetre of paper means on the floor under the mark farthest upstage; null where none is seen. */
  readonly farthest: { readonly point: string; readonly worth: PaperWorth } | null;
};

/** Weighs an exercise. Marks behind the eye count as asked, and nowhere else. */
export function weighExercise(exercise: Exercise): Weighed {
  const points = exercisePoints(exercise);
  const { stage, viewer, scaleRatio, task } = exercise;
  const [finest] = [...tolerances(exercise, points)].sort(([, a], [, b]) => a - b);
  const [farthest] = task.marks
    .flatMap((name) => points.get(name) ?? [])
    .filter(({ picture }) => picture !== null)
    .sort((a, b) => b.at[1] - a.at[1]);
  const worth = farthest && paperWorth(viewer, stage, underneath(farthest.at, stage), scaleRatio);
  return {
    marks: task.marks.length,
    finest: finest ? { point: finest[0], toleranceMm: finest[1] } : null,
    farthest: farthest && worth ? { point: farthest.name, worth } : null,
  };
}

function underneath([x, y]: readonly [number, number, number], stage: Exercise["stage"]) {
  return [x, y, floorHeight(stage, y)] as const;
}
