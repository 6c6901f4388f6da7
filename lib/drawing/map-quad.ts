import { invert3, type Matrix3, multiply3 } from "../geometry/matrix3";
import type { DrawingPoint } from "./display-list";

/** Corners in order round a quadrilateral. */
export type Quad = readonly [DrawingPoint, DrawingPoint, DrawingPoint, DrawingPoint];

/** A quadrilateral flatter than this share of its own size is a line, and has no inside to map. */
const FLAT = 1e-9;

/**
 * The plane projective map that takes the corners of `from` to those of `to`, in order, built by way of the unit square
 * (Heckbert, Fundamentals of Texture Mapping and Image Warping, 1989, sec. 2.2.3, from memory). Null when either
 * quadrilateral is flat or not convex: no view of a plane looks like that.
 */
export function mapQuad(from: Quad, to: Quad): ((point: DrawingPoint) => DrawingPoint) | null {
  const source = fromUnitSquare(from);
  const target = fromUnitSquare(to);
  const back = source && invert3(source);
  if (!back || !target) return null;
  return ([x, y]) => {
    const [X, Y, W] = multiply3(target, multiply3(back, [x, y, 1]));
    return [X / W, Y / W];
  };
}

function fromUnitSquare([[x0, y0], [x1, y1], [x2, y2], [x3, y3]]: Quad): Matrix3 | null {
  const [ax, ay, bx, by] = [x1 - x2, y1 - y2, x3 - x2, y3 - y2];
  const [sx, sy] = [x0 - x1 + x2 - x3, y0 - y1 + y2 - y3];
  const area = ax * by - bx * ay;
  const size = Math.max(
    Math.hypot(ax, ay),
    Math.hypot(bx, by),
    Math.hypot(x1 - x0, y1 - y0),
    Math.hypot(x3 - x0, y3 - y0),
  );
  if (!(Math.abs(area) > FLAT * size * size)) return null;
  const g = (sx * by - bx * sy) / area;
  const h = (ax * sy - sx * ay) / area;
  // The last row at the four corners: all of one sign for a convex quadrilateral.
  if (!(1 + g > FLAT && 1 + h > FLAT && 1 + g + h > FLAT)) return null;
  return [
    [x1 - x0 + g * x1, x3 - x0 + h * x3, x0],
    [y1 - y0 + g * y1, y3 - y0 + h * y3, y0],
    [g, h, 1],
  ];
}
