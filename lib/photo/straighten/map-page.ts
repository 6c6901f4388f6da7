import { invert3, type Matrix3, multiply3 } from "../../geometry/matrix3";
import type { SheetPlace } from "../../sheet/place-drawings";
import type { PageFit } from "../page-fit";
import type { PhotoPoint } from "../pixels";

/** Newton's steps at most, and the change, in half diagonals, under which one more would move nothing: 1e-8 of a pixel. */
const STEPS = 20;
const SETTLED = 1e-12;
/** A place of the sheet this near to the camera's own plane, or behind it, as a share of the matrix's size, has no image. */
const EDGE_ON = 1e-12;

/** Where a photograph has a place of the sheet; null for one that lies behind the camera, which no place of a seen sheet does. */
export function photoFromSheet(fit: PageFit, [right, down]: SheetPlace): PhotoPoint | null {
  const [X, Y, W] = multiply3(fit.matrix, [right, down, 1]);
  if (!(W > EDGE_ON * (Math.abs(X) + Math.abs(Y)))) return null;
  const { middle, halfDiagonalPx: half, k1 } = fit;
  const [u, v] = [(X / W - middle[0]) / half, (Y / W - middle[1]) / half];
  const stretch = 1 + k1 * (u * u + v * v);
  return [middle[0] + u * stretch * half, middle[1] + v * stretch * half];
}

/** Which place of the sheet's plane a point of the photograph shows; null for one past the plane's horizon, or where the lens folds. */
export function sheetFromPhoto(fit: PageFit, point: PhotoPoint): SheetPlace | null {
  const back = invert3(fit.matrix);
  return back && sheetFromPhotoBy(back, fit, point);
}

/** The same with the matrix's inverse at hand, for many points of one photograph. */
export function sheetFromPhotoBy(back: Matrix3, fit: PageFit, [right, down]: PhotoPoint): SheetPlace | null {
  const { middle, halfDiagonalPx: half, k1 } = fit;
  const [du, dv] = [(right - middle[0]) / half, (down - middle[1]) / half];
  const shrink = undistort(k1, Math.hypot(du, dv));
  if (shrink === null) return null;
  const [X, Y, W] = multiply3(back, [middle[0] + du * shrink * half, middle[1] + dv * shrink * half, 1]);
  const place: SheetPlace = [X / W, Y / W];
  // The matrix's sign decides which side of the horizon is seen; asking the way back keeps it in one place.
  const [x, y, w] = multiply3(fit.matrix, [place[0], place[1], 1]);
  return w > EDGE_ON * (Math.abs(x) + Math.abs(y)) ? place : null;
}

/** Undistorted distance from the middle over the distorted one: solves r (1 + k1 r^2) = distorted by Newton's method. */
function undistort(k1: number, distorted: number): number | null {
  if (distorted === 0 || k1 === 0) return 1;
  let r = distorted;
  for (let i = 0; i < STEPS; i++) {
    const slope = 1 + 3 * k1 * r * r;
    if (!(slope > 0)) return null;
    const step = (r * (1 + k1 * r * r) - distorted) / slope;
    r -= step;
    if (Math.abs(step) < SETTLED) return r / distorted;
  }
  return null;
}
