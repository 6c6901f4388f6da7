import type { Matrix3 } from "../geometry/matrix3";
import type { PhotoPoint } from "./pixels";

/**
 * Where a flat sheet lies in a photograph: a homography from the sheet's millimetres (right and down from its upper left
 * corner; of a drawing that is no sheet of ours, from the picture's own [0, 0]) to an undistorted photograph, and one term of
 * radial distortion about the photograph's middle. With u, v the undistorted place from the middle in units of half the
 * diagonal, the photograph has it at (u, v) * (1 + k1 * (u^2 + v^2)). It is data alone, and survives JSON.
 */
export type PageFit = {
  readonly matrix: Matrix3;
  readonly k1: number;
  readonly middle: PhotoPoint;
  readonly halfDiagonalPx: number;
  /** Root mean square of what the fit leaves over at the marker's corners, millimetres on the sheet; null for four corners set by hand, which it meets exactly. */
  readonly residualMm: number | null;
};
