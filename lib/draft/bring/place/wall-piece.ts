import { cross, distance, subtract, type Vector2 } from "../../../geometry/vector";
import type { PlanPoint } from "../../../stage/frame";

/** A straight piece of a wall while a plan is being put together, metres. */
export type WallPiece = {
  readonly a: PlanPoint;
  readonly b: PlanPoint;
  readonly thickness: number;
  /** Unit direction offstage, where its two drawn faces tell it; null for a single line. */
  readonly offstage: PlanPoint | null;
};

/** Ends nearer than half an inch were meant to meet, metres. */
export const JOIN_M = 0.0127;
/** Lines that turn from each other by less were meant to be parallel, radians. */
const PARALLEL = Math.PI / 360;

/** A line through `a`, for telling places along it and beside it. */
export type Along = { readonly origin: PlanPoint; readonly along: PlanPoint; readonly length: number };

export function alongPiece({ a, b }: Pick<WallPiece, "a" | "b">): Along {
  const length = distance(a, b);
  return { origin: a, along: [(b[0] - a[0]) / length, (b[1] - a[1]) / length], length };
}

/** How far along a line a place is, and how far to its left. */
export function placeAlong({ origin, along }: Along, at: PlanPoint): readonly [u: number, v: number] {
  const out = subtract(at, origin);
  return [out[0] * along[0] + out[1] * along[1], cross(along, out)];
}

/** Whether two unit directions lie along one line, either way. */
export function areParallel(one: Vector2, other: Vector2): boolean {
  return Math.abs(cross(one, other)) < Math.sin(PARALLEL);
}

export function lengthOf({ a, b }: Pick<WallPiece, "a" | "b">): number {
  return distance(a, b);
}
