import type { Exercise } from "../exercise/exercise";
import type { ProjectedPoint } from "../exercise/exercise-points";
import { distance } from "../geometry/vector";
import { toPaperMm } from "../measure/scale";
import { backProjectToFloor, type FloorPlace, heightShown, project } from "../perspective/project";
import type { PicturePoint, PlanPoint, StagePoint } from "../stage/frame";
import { floorHeight } from "../stage/stage";
import type { StageError } from "./grade";

/** A mark held against the truth. `seen` is the mark in the picture (a plan mark projected), null behind the eye. */
export type Judged = {
  readonly point: ProjectedPoint;
  readonly at: PicturePoint | PlanPoint;
  readonly seen: PicturePoint | null;
  /** Where it should have been, in the picture. */
  readonly target: PicturePoint;
  /** The same in the terms of the marks: on the plan for `picture-to-plan`. */
  readonly targetAt: PicturePoint | PlanPoint;
  readonly offMm: number | null;
  readonly plan: StageError | null;
  /** How much lengths are foreshortened where the mark is judged. */
  readonly s: number;
};

/**
 * Holds a mark against the truth. `ownFoot` is the student's mark for the point below, when the drawing goes on from the
 * student's own marks: then a top is judged over that foot's place, so that a consistent drawing is not punished twice.
 */
export function judgeMark(
  exercise: Exercise,
  point: ProjectedPoint,
  at: PicturePoint | PlanPoint,
  ownFoot: { readonly point: ProjectedPoint; readonly at: PicturePoint } | null,
  scaleRatio: number,
): Judged {
  if (!point.picture || point.s === null)
    throw new Error(`${point.name} is not seen from the eye; the sense checks refuse such an exercise.`);
  if (exercise.task.kind === "picture-to-plan")
    return judgePlanMark(exercise, point, at as PlanPoint, point.picture, scaleRatio);
  const mark = at as PicturePoint;
  const { target, s } = (ownFoot && targetOverOwnFoot(exercise, point, ownFoot)) ?? {
    target: point.picture,
    s: point.s,
  };
  return {
    point,
    at,
    seen: mark,
    target,
    targetAt: target,
    offMm: toPaperMm(distance(mark, target), scaleRatio),
    plan: meaningOf(exercise, point, mark, s),
    s,
  };
}

function judgePlanMark(
  exercise: Exercise,
  point: ProjectedPoint,
  [x, y]: PlanPoint,
  truth: PicturePoint,
  scaleRatio: number,
): Judged {
  const stood = project(exercise.viewer, standsAt(exercise, point, [x, y]));
  return {
    point,
    at: [x, y],
    seen: stood.seen ? stood.at : null,
    target: truth,
    targetAt: [point.at[0], point.at[1]],
    offMm: stood.seen ? toPaperMm(distance(stood.at, truth), scaleRatio) : null,
    plan: { across: x - point.at[0], upstage: y - point.at[1] },
    s: point.s as number,
  };
}

/** A point moved to another place of the plan: what stands on the floor follows it, the rest keeps its own level. */
export function standsAt({ stage }: Pick<Exercise, "stage">, point: ProjectedPoint, [x, y]: PlanPoint): StagePoint {
  return [x, y, point.onFloor ? floorHeight(stage, y) + point.base : point.at[2]];
}

/** Where a point belongs when its foot stands where the student put it; null when that foot shows no place. */
function targetOverOwnFoot(
  exercise: Exercise,
  point: ProjectedPoint,
  foot: { readonly point: ProjectedPoint; readonly at: PicturePoint },
): { readonly target: PicturePoint; readonly s: number } | null {
  const place = placeShown(exercise, foot.point, foot.at);
  if (!place.found) return null;
  const over: StagePoint = [place.at[0], place.at[1], point.at[2]];
  const seen = project(exercise.viewer, over);
  return seen.seen ? { target: seen.at, s: seen.s } : null;
}

/** Whether a mark for this point means a place on a known surface (rather than a height over a known place). */
export function meansPlace(point: Pick<ProjectedPoint, "onFloor" | "role">): boolean {
  return point.onFloor || point.role === "nosing";
}

/** The place a picture point shows: on the floor (or the base) for what stands there, on the point's own level for the rest. */
export function placeShown(exercise: Exercise, point: ProjectedPoint, at: PicturePoint): FloorPlace {
  return point.onFloor
    ? backProjectToFloor(exercise.viewer, exercise.stage, at, point.base)
    : backProjectToFloor(exercise.viewer, { rake: 0 }, at, point.at[2]);
}

function meaningOf(exercise: Exercise, point: ProjectedPoint, mark: PicturePoint, s: number): StageError | null {
  if (!meansPlace(point)) return { height: heightShown(exercise.viewer, mark[1], s) - point.at[2] };
  const place = placeShown(exercise, point, mark);
  return place.found ? { across: place.at[0] - point.at[0], upstage: place.at[1] - point.at[1] } : null;
}
