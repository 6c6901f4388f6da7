import { invert3, type Matrix3 } from "@/lib/geometry/matrix3";
import type { PageFit } from "@/lib/photo/page-fit";
import type { GreyPixels } from "@/lib/photo/pixels";
import { sheetFromPhotoBy } from "@/lib/photo/straighten/map-page";
import { sampleGrey } from "@/lib/photo/straighten/sample-grey";
import type { Pixels } from "../../drawing/rasterise";

export type View = {
  readonly width: number;
  readonly height: number;
  /** Round the sheet's own left-to-right axis, then its up-and-down axis, then about the line of sight. */
  readonly tiltDeg?: number;
  readonly turnDeg?: number;
  readonly rollDeg?: number;
  readonly k1?: number;
  /** What the sheet's longer side takes of the photograph's, about. */
  readonly fill?: number;
};

const DEGREE = Math.PI / 180;
/** A telephone's usual lens: focal length over half the diagonal of its picture (26 mm to 21.6 mm; from memory). */
const FOCAL = 1.2;
const TABLE = 120;

/** How a camera sees a sheet of a size: true homography and distortion. */
export function viewSheet(widthMm: number, heightMm: number, view: View): PageFit {
  const { width, height, tiltDeg = 0, turnDeg = 0, rollDeg = 0, k1 = 0, fill = 0.85 } = view;
  const halfDiagonalPx = Math.hypot(width, height) / 2;
  const f = FOCAL * halfDiagonalPx;
  const away = (f * Math.max(heightMm / Math.max(width, height), widthMm / Math.min(width, height))) / fill;
  const [ct, st] = [Math.cos(tiltDeg * DEGREE), Math.sin(tiltDeg * DEGREE)];
  const [cp, sp] = [Math.cos(turnDeg * DEGREE), Math.sin(turnDeg * DEGREE)];
  const [cr, sr] = [Math.cos(rollDeg * DEGREE), Math.sin(rollDeg * DEGREE)];
  /** A sheet place from the sheet's middle, turned and moved before the camera. */
  const turned = (x: number, y: number, one: number): readonly [number, number, number] => {
    const [x1, y1, z1] = [x, y * ct, y * st];
    const [x2, z2] = [x1 * cp + z1 * sp, -x1 * sp + z1 * cp];
    return [x2 * cr - y1 * sr, x2 * sr + y1 * cr, z2 + away * one];
  };
  const [cx, cy] = [widthMm / 2, heightMm / 2];
  const columns = [turned(1, 0, 0), turned(0, 1, 0), turned(-cx, -cy, 1)].map(
    ([x, y, z]) => [f * x + (width / 2) * z, f * y + (height / 2) * z, z] as const,
  );
  const row = (i: 0 | 1 | 2) => columns.map((column) => column[i]) as unknown as readonly [number, number, number];
  const matrix: Matrix3 = [row(0), row(1), row(2)];
  return { matrix, k1, middle: [width / 2, height / 2], halfDiagonalPx, residualMm: null };
}

/** Places are worked out one in so many pixels along a row, the rest laid between. */
const STRIDE = 8;

/** A photograph of a printed page by a fit: each pixel the mean of some places in it, on a table of even grey. */
export function warpSheet(page: Pixels, fit: PageFit, width: number, height: number, samples = 2): GreyPixels {
  const back = invert3(fit.matrix);
  if (!back) throw new Error("The view has no way back.");
  const grey = new Uint8Array(width * height);
  const sums = new Float64Array(width);
  for (let j = 0; j < height; j++) {
    sums.fill(0);
    for (let n = 0; n < samples * samples; n++) {
      const [x, y] = [((n % samples) + 0.5) / samples, j + (Math.floor(n / samples) + 0.5) / samples];
      const at = (i: number) => sheetFromPhotoBy(back, fit, [i + x, y]) ?? [-1, -1];
      let from = at(0);
      for (let i = 0; i < width; i += STRIDE) {
        const to = at(i + STRIDE);
        for (let k = 0; k < STRIDE && i + k < width; k++) {
          const t = k / STRIDE;
          const right = (from[0] + t * (to[0] - from[0])) * page.perMm;
          const down = (from[1] + t * (to[1] - from[1])) * page.perMm;
          const on = right >= 0 && down >= 0 && right < page.width && down < page.height;
          sums[i + k] = (sums[i + k] ?? 0) + (on ? sampleGrey(page, right, down) : TABLE);
        }
        from = to;
      }
    }
    for (let i = 0; i < width; i++) grey[j * width + i] = (sums[i] ?? 0) / samples ** 2 + 0.5;
  }
  return { width, height, grey };
}
