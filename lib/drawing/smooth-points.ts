import type { DrawingPoint } from "./display-list";

/** Pieces drawn between one point and the next. */
const PIECES = 8;

/** A smooth closed curve through the points (a uniform Catmull-Rom spline); the first is not repeated. */
export function smoothLoop(points: readonly DrawingPoint[]): readonly DrawingPoint[] {
  const at = (i: number) => points[(i + points.length) % points.length] as DrawingPoint;
  return points.flatMap((_, i) =>
    Array.from({ length: PIECES }, (_, k) => spline([at(i - 1), at(i), at(i + 1), at(i + 2)], k / PIECES)),
  );
}

/** A smooth open curve through the points, both ends included. */
export function smoothLine(points: readonly DrawingPoint[]): readonly DrawingPoint[] {
  const at = (i: number) => points[Math.min(Math.max(i, 0), points.length - 1)] as DrawingPoint;
  const inner = points
    .slice(1)
    .flatMap((_, i) =>
      Array.from({ length: PIECES }, (_, k) => spline([at(i - 1), at(i), at(i + 1), at(i + 2)], k / PIECES)),
    );
  return [...inner, ...points.slice(-1)];
}

function spline(
  [a, b, c, d]: readonly [DrawingPoint, DrawingPoint, DrawingPoint, DrawingPoint],
  t: number,
): DrawingPoint {
  const blend = (i: 0 | 1) =>
    b[i] +
    (t / 2) * (c[i] - a[i] + t * (2 * a[i] - 5 * b[i] + 4 * c[i] - d[i] + t * (3 * (b[i] - c[i]) + d[i] - a[i])));
  return [blend(0), blend(1)];
}
