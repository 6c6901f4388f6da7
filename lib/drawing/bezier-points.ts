import type { DrawingPoint } from "./display-list";

/** A curve's pieces: enough that none turns more than the hand style takes for a curve. */
const PIECES = 16;

/** Points of a cubic Bezier curve, both ends included. */
export function bezierPoints(
  a: DrawingPoint,
  b: DrawingPoint,
  c: DrawingPoint,
  d: DrawingPoint,
): readonly DrawingPoint[] {
  return Array.from({ length: PIECES + 1 }, (_, i) => {
    const t = i / PIECES;
    const r = 1 - t;
    const [wa, wb, wc, wd] = [r ** 3, 3 * r * r * t, 3 * r * t * t, t ** 3];
    return [wa * a[0] + wb * b[0] + wc * c[0] + wd * d[0], wa * a[1] + wb * b[1] + wc * c[1] + wd * d[1]] as const;
  });
}
