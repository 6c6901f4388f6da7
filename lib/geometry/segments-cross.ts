import { cross, distance, subtract, type Vector2 } from "./vector";

/** Ends nearer than this are one point, metres. */
export const SAME_POINT_M = 1e-6;

type Segment = readonly [Vector2, Vector2];

/** Distance from a point to a segment. */
export function distanceToSegment(p: Vector2, [a, b]: Segment): number {
  const along = subtract(b, a);
  const square = along[0] ** 2 + along[1] ** 2;
  const to = subtract(p, a);
  const t = square === 0 ? 0 : Math.min(1, Math.max(0, (to[0] * along[0] + to[1] * along[1]) / square));
  return distance(p, [a[0] + along[0] * t, a[1] + along[1] * t]);
}

/**
 * Whether two segments touch elsewhere than at a shared end: they cross, one ends on the middle of the other, or they
 * run over each other. Sharing one end is not crossing.
 */
export function segmentsCross(one: Segment, other: Segment): boolean {
  if (farApart(one, other, 0) || farApart(one, other, 1)) return false;
  if (crossProperly(one, other)) return true;
  const loose = [
    ...one.filter((p) => !isEndOf(p, other)).map((p) => distanceToSegment(p, other)),
    ...other.filter((p) => !isEndOf(p, one)).map((p) => distanceToSegment(p, one)),
  ];
  if (loose.length === 0) return true; // the same segment twice
  return loose.some((gap) => gap < SAME_POINT_M);
}

/** Whether one segment ends on the other's middle, coming from the side: a junction, as of a wall butted against a wall. */
export function isJunction(one: Segment, other: Segment): boolean {
  const slant = Math.abs(cross(subtract(one[1], one[0]), subtract(other[1], other[0])));
  const lengths = distance(...one) * distance(...other);
  if (!(slant > SAME_POINT_M * lengths)) return false;
  const endsOn = (a: Segment, b: Segment) => a.some((p) => !isEndOf(p, b) && distanceToSegment(p, b) < SAME_POINT_M);
  return endsOn(one, other) || endsOn(other, one);
}

/** Whether the one lies wholly before or wholly behind the other along an axis: so it is with nearly all pairs of a large plan. */
function farApart([a, b]: Segment, [c, d]: Segment, axis: 0 | 1): boolean {
  return (
    Math.max(a[axis], b[axis]) + SAME_POINT_M < Math.min(c[axis], d[axis]) ||
    Math.max(c[axis], d[axis]) + SAME_POINT_M < Math.min(a[axis], b[axis])
  );
}

function isEndOf(p: Vector2, [a, b]: Segment): boolean {
  return distance(p, a) < SAME_POINT_M || distance(p, b) < SAME_POINT_M;
}

function crossProperly([a, b]: Segment, [c, d]: Segment): boolean {
  const side = (p: Vector2, q: Vector2, r: Vector2) => cross(subtract(q, p), subtract(r, p));
  return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0 && !shareEnd([a, b], [c, d]);
}

function shareEnd(one: Segment, other: Segment): boolean {
  return one.some((p) => isEndOf(p, other));
}
