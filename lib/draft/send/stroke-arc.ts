import type { DrawingPoint } from "../../drawing/display-list";
import { distance } from "../../geometry/vector";

/** A stroke that lies on one circle: a whole one, or an arc from its first angle counter-clockwise to its second, degrees. */
export type StrokeArc = {
  readonly centre: DrawingPoint;
  readonly radius: number;
  readonly arc: readonly [fromDeg: number, toDeg: number] | null;
};

/** So few points lie on a circle by chance. */
const FEWEST_POINTS = 5;
/** Points of an arc lie this near its circle, as a share of the radius: nearer than any drawing could tell. */
const ROUND = 1e-9;

/** The arc or circle that a stroke was sampled from, or null when it is none. */
export function strokeArc(points: readonly DrawingPoint[], closed: boolean): StrokeArc | null {
  const [first, last] = [points[0], points.at(-1)];
  const third = points[Math.floor(points.length / 3)];
  const other = points[Math.floor((2 * points.length) / 3)];
  if (points.length < FEWEST_POINTS || !first || !last || !third || !other) return null;
  const centre = circumcentre(first, third, other);
  if (!centre) return null;
  const radius = distance(centre, first);
  if (!points.every((at) => Math.abs(distance(at, centre) - radius) <= ROUND * radius)) return null;
  if (closed) return isEven(points) ? { centre, radius, arc: null } : null;
  const turn = (third[0] - first[0]) * (other[1] - first[1]) - (third[1] - first[1]) * (other[0] - first[0]);
  const angle = ([x, y]: DrawingPoint) => (Math.atan2(y - centre[1], x - centre[0]) * 180) / Math.PI;
  return { centre, radius, arc: turn > 0 ? [angle(first), angle(last)] : [angle(last), angle(first)] };
}

/** Corners of a circle's polygon are evenly spaced; other shapes may have theirs on a circle as well. */
function isEven(points: readonly DrawingPoint[]): boolean {
  const steps = points.map((at, i) => distance(at, points[(i + 1) % points.length] as DrawingPoint));
  return points.length >= 12 && Math.max(...steps) - Math.min(...steps) <= 1e-6 * Math.max(...steps);
}

function circumcentre(a: DrawingPoint, b: DrawingPoint, c: DrawingPoint): DrawingPoint | null {
  const [bx, by, cx, cy] = [b[0] - a[0], b[1] - a[1], c[0] - a[0], c[1] - a[1]];
  const turn = 2 * (bx * cy - by * cx);
  if (!(Math.abs(turn) > 1e-12 * (bx * bx + by * by))) return null;
  const [bb, cc] = [bx * bx + by * by, cx * cx + cy * cy];
  return [a[0] + (cy * bb - by * cc) / turn, a[1] + (bx * cc - cx * bb) / turn];
}
