import { project } from "../perspective/project";
import { centreVanishingPoint, vanishingPoint } from "../perspective/vanishing-point";
import type { Wall } from "../plan/plan";
import { wallLine } from "../plan/wall-line";
import type { PicturePoint, PlanPoint } from "../stage/frame";
import { floorHeight } from "../stage/stage";
import type { Asked } from "./asked";
import type { Prediction } from "./habit";

/** Lengths smaller than this are nothing, metres. */
export const NOTHING_M = 1e-9;

/** Vanishing points nearer than this are one, metres: walls drawn parallel in the plan, up to its rounding. */
const SAME_POINT_M = 1e-6;

/** A direction whose sine to the plaster line, or to the centre line, is under this is parallel to it. */
const RAKING_SINE = 1e-6;

/** Asked on the stage floor itself (not on a base), so that a mark is a place. */
export function isFloor({ point }: Asked): boolean {
  return point.onFloor && point.base === 0;
}

/** Whether the plan is read back out of the picture. */
export function isReadBack({ exercise }: Pick<Asked, "exercise">): boolean {
  return exercise.task.kind === "picture-to-plan";
}

/** Asked at the foot of a corner, on the floor or on a base. */
export function isCornerFoot({ point }: Asked): boolean {
  return point.group === "corner" && point.role === "foot";
}

export function isTopOrHead({ point }: Asked): boolean {
  return point.role === "top" || point.role === "head";
}

/** Whether the asked point is a corner of a raking wall whose other end is on the sheet. */
export function isFarCorner({ point, near }: Asked): boolean {
  return point.group === "corner" && near !== null && isRaking(near.direction);
}

function isRaking([dx, dy]: PlanPoint): boolean {
  const length = Math.hypot(dx, dy);
  return Math.abs(dx) > RAKING_SINE * length && Math.abs(dy) > RAKING_SINE * length;
}

/** The true picture of a place on the floor, as a list that is empty behind the eye. */
export function floorPlace({ exercise }: Asked, [x, y]: PlanPoint): readonly PicturePoint[] {
  const seen = project(exercise.viewer, [x, y, floorHeight(exercise.stage, y)]);
  return seen.seen ? [seen.at] : [];
}

/** Picture height of the back wall's foot. */
export function backWallFoot({ exercise }: Pick<Asked, "exercise">): number | null {
  const { stage, viewer } = exercise;
  const seen = project(viewer, [viewer.offset, stage.depth, floorHeight(stage, stage.depth)]);
  return seen.seen ? seen.at[1] : null;
}

/**
 * The point at picture height Z on the floor's ray from offset x: it runs to the CVP, or on a rake to the point above it;
 * over the level apron (Z under 0) always to the CVP.
 */
export function onRay({ exercise }: Asked, x: number, Z: number): PicturePoint {
  const { viewer, stage } = exercise;
  const height = viewer.eyeHeight + (Z > 0 ? stage.rake * viewer.distance : 0);
  return [viewer.offset + (x - viewer.offset) * (1 - Z / height), Z];
}

/** The point at picture height Z on the line from `from` to `to`; empty for a level line. */
export function onLineAtHeight(from: PicturePoint, to: PicturePoint, Z: number): readonly PicturePoint[] {
  const rise = to[1] - from[1];
  return Math.abs(rise) < NOTHING_M ? [] : [[from[0] + ((to[0] - from[0]) * (Z - from[1])) / rise, Z]];
}

/** The point at picture offset X on the line from `from` to `to`; empty for an upright one. */
export function onLineAcross(from: PicturePoint, to: PicturePoint, X: number): readonly PicturePoint[] {
  const run = to[0] - from[0];
  return Math.abs(run) < NOTHING_M ? [] : [[X, from[1] + ((to[1] - from[1]) * (X - from[0])) / run]];
}

/** Vanishing points of the plan's other walls, each once under its first wall's id; not the CVP, which other habits are about. */
export function otherVanishingPoints({
  exercise,
  near,
}: Asked): readonly { readonly id: string; readonly at: PicturePoint }[] {
  const { plan, viewer } = exercise;
  const own = near && levelVanishing(exercise, near.wall);
  const found: { readonly id: string; readonly at: PicturePoint }[] = [];
  for (const wall of plan.walls) {
    const at = levelVanishing(exercise, wall);
    if (!at) continue;
    const known = [centreVanishingPoint(viewer), ...(own ? [own] : []), ...found.map((one) => one.at)];
    if (known.every(([X]) => Math.abs(X - at[0]) > SAME_POINT_M)) found.push({ id: wall.id, at });
  }
  return found;
}

function levelVanishing({ plan, viewer }: Asked["exercise"], wall: Wall): PicturePoint | null {
  const line = wallLine(plan, wall);
  return line && vanishingPoint(viewer, [line.along[0], line.along[1], 0]);
}

/** Predictions of a habit with one variant. */
export function only(places: readonly PicturePoint[]): readonly Prediction[] {
  return places.map((at) => ({ variant: "", at }));
}
