import { distance } from "../../../geometry/vector";
import type { PlanPoint } from "../../../stage/frame";

/** A line on a layer of openings, metres: the bend a leaf swings through, or a straight line as of a sill, a header or a leaf. */
export type OpeningShape =
  | {
      readonly kind: "bend";
      readonly centre: PlanPoint;
      readonly radius: number;
      readonly ends: readonly [PlanPoint, PlanPoint];
    }
  | { readonly kind: "line"; readonly ends: readonly [PlanPoint, PlanPoint] };

/** Leaves are so wide, metres. */
const NARROWEST_LEAF_M = 0.2;
const WIDEST_LEAF_M = 3;
/** All points of a bend lie so near one circle, as a share of its radius. */
const ROUND = 0.02;

/** The shapes among the lines of a layer of openings; a bend that is part of no circle is none. */
export function openingShapes(
  lines: readonly { points: readonly PlanPoint[]; curved: boolean }[],
): readonly OpeningShape[] {
  return lines.flatMap(({ points, curved }): OpeningShape[] => {
    if (!curved)
      return points.slice(1).map((b, i): OpeningShape => ({ kind: "line", ends: [points[i] as PlanPoint, b] }));
    const [first, middle, last] = [points[0], points[Math.floor(points.length / 2)], points.at(-1)];
    const centre = first && middle && last ? circleThrough(first, middle, last) : null;
    if (!first || !last || !centre) return [];
    const radius = distance(centre, first);
    const round = points.every((at) => Math.abs(distance(at, centre) - radius) <= ROUND * radius);
    return round && radius >= NARROWEST_LEAF_M && radius <= WIDEST_LEAF_M
      ? [{ kind: "bend", centre, radius, ends: [first, last] }]
      : [];
  });
}

/** The centre of the circle through three places, or null when they lie on one line. */
function circleThrough(a: PlanPoint, b: PlanPoint, c: PlanPoint): PlanPoint | null {
  const [bx, by] = [b[0] - a[0], b[1] - a[1]];
  const [cx, cy] = [c[0] - a[0], c[1] - a[1]];
  const turn = 2 * (bx * cy - by * cx);
  if (!(Math.abs(turn) > 1e-9)) return null;
  const [bb, cc] = [bx * bx + by * by, cx * cx + cy * cy];
  return [a[0] + (cy * bb - by * cc) / turn, a[1] + (bx * cc - cx * bb) / turn];
}
