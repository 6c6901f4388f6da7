import type { DrawingPoint } from "./display-list";

/** Curves are sampled at least this finely, radians; the hand style knows a curve by turns smaller than its own limit. */
const ARC_STEP = (7.5 * Math.PI) / 180;

/** Points of an arc of an ellipse, both ends included; angles in radians, counter-clockwise from the first axis. */
export function arcPoints(
  [cx, cy]: DrawingPoint,
  radii: readonly [number, number],
  from: number,
  to: number,
): readonly DrawingPoint[] {
  const pieces = Math.max(1, Math.ceil(Math.abs(to - from) / ARC_STEP));
  return Array.from({ length: pieces + 1 }, (_, i) => {
    const angle = from + ((to - from) * i) / pieces;
    return [cx + radii[0] * Math.cos(angle), cy + radii[1] * Math.sin(angle)] as const;
  });
}

/** Points of a whole circle, for a closed stroke: the first is not repeated. */
export function circlePoints(centre: DrawingPoint, radius: number): readonly DrawingPoint[] {
  return arcPoints(centre, [radius, radius], 0, 2 * Math.PI).slice(0, -1);
}
