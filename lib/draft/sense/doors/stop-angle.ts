import { insideOutline } from "../../../plan/surface-level";
import type { PlanPoint } from "../../../stage/frame";
import { TOUCH_M } from "../bodies";
import type { Leaf } from "./leaf";

/**
 * How far a leaf opens before it meets an outline, radians from shut; null where it opens to a right angle without. The leaf has
 * no thickness; what only touches its sweep is clear of it. Exact: each side of the outline is cut to the quarter disc that the
 * leaf sweeps, along a straight line the angle seen from the hinge only grows or only falls, so its least stands at an end.
 */
export function stopAngle(leaf: Leaf, outline: readonly PlanPoint[]): number | null {
  const local = outline.map((place) => toLeaf(leaf, place));
  const reach = leaf.width - TOUCH_M;
  if (!(reach > TOUCH_M)) return null;
  if (outline.length > 2 && insideOutline(local, [(TOUCH_M + reach) / 2, 2 * TOUCH_M])) return 0;
  const sides = outline.length === 2 ? local.slice(0, 1) : local;
  const angles = sides.flatMap((from, i) => {
    const to = local[(i + 1) % local.length] as PlanPoint;
    return sideAngles(from, to, reach);
  });
  if (angles.length > 0) return Math.min(...angles);
  return null;
}

/** A place measured from the hinge: along the shut leaf and along the open one. */
function toLeaf({ pivot, shut, open }: Leaf, [x, y]: PlanPoint): PlanPoint {
  const [dx, dy] = [x - pivot[0], y - pivot[1]];
  return [dx * shut[0] + dy * shut[1], dx * open[0] + dy * open[1]];
}

/** The angles at both ends of what of a side lies in the quarter disc; none where nothing does. */
function sideAngles(from: PlanPoint, to: PlanPoint, reach: number): readonly number[] {
  const [du, dv] = [to[0] - from[0], to[1] - from[1]];
  const square = du * du + dv * dv;
  if (square === 0) return [];
  const half = (from[0] * du + from[1] * dv) / square;
  const root = half * half - (from[0] * from[0] + from[1] * from[1] - reach * reach) / square;
  if (!(root > 0)) return [];
  let [first, last] = [Math.max(0, -half - Math.sqrt(root)), Math.min(1, -half + Math.sqrt(root))];
  for (const [start, run] of [
    [from[0] - TOUCH_M, du],
    [from[1] - TOUCH_M, dv],
  ] as const) {
    if (run === 0) {
      if (start <= 0) return [];
    } else if (run > 0) first = Math.max(first, -start / run);
    else last = Math.min(last, -start / run);
  }
  if (!(first < last)) return [];
  return [first, last].map((t) => Math.atan2(from[1] + dv * t, from[0] + du * t));
}
