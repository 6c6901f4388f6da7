import type { Exercise } from "../exercise/exercise";
import type { ProjectedPoint } from "../exercise/exercise-points";
import { distance } from "../geometry/vector";
import { standsAt } from "../grading/judge-mark";
import { toPaperMm } from "../measure/scale";
import { project } from "../perspective/project";
import type { PicturePoint, StagePoint } from "../stage/frame";
import { floorHeight } from "../stage/stage";
import type { Part } from "./error-parts";
import { LEAST_GUESS, MOST_GUESS } from "./trace-skill";

/** Of the whole way a mark might be put along, the share at which a student who has read the plan would still put it: common practice, no source. */
const PLAUSIBLE_SHARE = 0.5;

/**
 * The chance that a mark is right by luck: the area of the tolerance's disc over the area of paper on which the mark might
 * plausibly be put by a student who lacks this one skill. That is a share of what the rest of the place leaves open: for the
 * whole place, of the floor as drawn, both ways; for one part, of a band two tolerances wide. Bounded by `LEAST_GUESS` and `MOST_GUESS`, which
 * also holds where there is no such area.
 */
export function guessFor(
  exercise: Exercise,
  point: ProjectedPoint,
  part: Part,
  toleranceMm: number,
  scaleRatio: number = exercise.scaleRatio,
): number {
  const share = (Math.PI * toleranceMm ** 2) / plausibleArea(exercise, point, part, toleranceMm, scaleRatio);
  return Number.isFinite(share) ? Math.min(MOST_GUESS, Math.max(LEAST_GUESS, share)) : MOST_GUESS;
}

/** Square millimetres of paper on which a mark might plausibly be put; 0 where the eye sees none of it. */
export function plausibleArea(
  exercise: Exercise,
  point: ProjectedPoint,
  part: Part,
  toleranceMm: number,
  scaleRatio: number = exercise.scaleRatio,
): number {
  const { stage } = exercise;
  const mm = (metres: number) => toPaperMm(metres, scaleRatio);
  const [x, y] = point.at;
  const band = (length: number) => 2 * toleranceMm * PLAUSIBLE_SHARE * mm(length);
  const way = (a: StagePoint, b: StagePoint) => band(apart(see(exercise, a), see(exercise, b)));
  const half = stage.opening.width / 2;
  switch (part) {
    case "depth":
      return way(standsAt(exercise, point, [x, 0]), standsAt(exercise, point, [x, stage.depth]));
    case "across":
    case "wall":
      return way(standsAt(exercise, point, [-half, y]), standsAt(exercise, point, [half, y]));
    case "height": {
      const foot = see(exercise, [x, y, floorHeight(stage, y)]);
      return foot ? band(Math.max(0, stage.opening.height - foot[1])) : 0;
    }
    case "place":
      return floorArea(exercise) * (PLAUSIBLE_SHARE * mm(1)) ** 2;
  }
}

/** The floor from the plaster line to the back wall, as drawn: a trapezium, square picture metres. */
function floorArea(exercise: Exercise): number {
  const { width } = exercise.stage.opening;
  const depth = exercise.stage.depth;
  const back = project(exercise.viewer, [0, depth, floorHeight(exercise.stage, depth)]);
  return back.seen ? ((width + width * back.s) / 2) * Math.abs(back.at[1]) : 0;
}

function see({ viewer }: Exercise, at: StagePoint): PicturePoint | null {
  const seen = project(viewer, at);
  return seen.seen ? seen.at : null;
}

function apart(a: PicturePoint | null, b: PicturePoint | null): number {
  return a && b ? distance(a, b) : 0;
}
