import type { Matrix3, Vector3 } from "../../geometry/matrix3";
import type { SheetPlace } from "../../sheet/place-drawings";
import type { PageFit } from "../page-fit";
import type { GreyPixels, PhotoPoint } from "../pixels";
import { fitHomography, fitLens, type SeenPair } from "./fit-lens";

/** A place of the sheet and where the photograph has it. */
export type PlacePair = { readonly place: SheetPlace; readonly point: PhotoPoint };

/**
 * The fit of places to points, with the lens's distortion or without; null where they do not say enough. Worked out about the places' own
 * middle and in units of their size, for figures of about one.
 */
export function fitPairs(
  pairs: readonly PlacePair[],
  { width, height }: Pick<GreyPixels, "width" | "height">,
  model: "lens" | "flat",
): PageFit | null {
  const middle: PhotoPoint = [width / 2, height / 2];
  const halfDiagonalPx = Math.hypot(width, height) / 2;
  const rights = pairs.map(({ place }) => place[0]);
  const downs = pairs.map(({ place }) => place[1]);
  const [left, right, top, bottom] = [Math.min(...rights), Math.max(...rights), Math.min(...downs), Math.max(...downs)];
  const [cx, cy, unit] = [(left + right) / 2, (top + bottom) / 2, Math.hypot(right - left, bottom - top) / 2];
  if (!(unit > 0)) return null;
  const seen = pairs.map(
    ({ place, point }): SeenPair => ({
      x: (place[0] - cx) / unit,
      y: (place[1] - cy) / unit,
      u: (point[0] - middle[0]) / halfDiagonalPx,
      v: (point[1] - middle[1]) / halfDiagonalPx,
    }),
  );
  const flat = model === "lens" ? null : fitHomography(seen);
  const lens = model === "lens" ? fitLens(seen) : flat && { matrix: flat, k1: 0 };
  if (!lens) return null;
  const [u, v, w] = lens.matrix.map(
    ([a, b, c]): Vector3 => [a / unit, b / unit, c - (a * cx + b * cy) / unit],
  ) as unknown as Matrix3;
  const inPixels = (row: Vector3, offset: number) =>
    row.map((each, i) => each * halfDiagonalPx + (w[i] as number) * offset) as unknown as Vector3;
  return {
    matrix: [inPixels(u, middle[0]), inPixels(v, middle[1]), w],
    k1: lens.k1,
    middle,
    halfDiagonalPx,
    residualMm: null,
  };
}
