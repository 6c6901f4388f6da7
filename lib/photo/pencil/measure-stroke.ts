import { type DarkRaster, darkAt, middleOf } from "./dark-at";
import type { Straight } from "./fit-straight";

/** `darkness` is null for a line that lies under print all along. */
export type Stroke = Straight & { readonly darkness: number | null; readonly widthMm: number };

/** How far to each side a stroke is looked at, millimetres. */
const BESIDE_MM = 0.8;
/** Millimetres along it from one look to the next. */
const STEP_MM = 0.5;
/** How far inside and outside its fitted end a stroke's own end is looked for, millimetres. */
const END_MM = 0.6;
/** A stroke ends where it is this share as dark as it is in its middle. */
const ENDS_AT = 0.5;

/** How dark and wide a stroke is, from cuts across it, and where exactly it ends. */
export function measureStroke(line: Straight, raster: DarkRaster): Stroke {
  const { pixelsPerMm, mask, width } = raster;
  const { from, to } = line;
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const [ux, uy] = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
  const reach = Math.round(BESIDE_MM * pixelsPerMm);
  const steps = Math.max(3, Math.floor(length / (STEP_MM * pixelsPerMm)));
  const [peaks, widths]: [number[], number[]] = [[], []];
  for (let k = 0; k < steps; k++) {
    const s = ((k + 0.5) / steps) * length;
    const [x, y] = [from[0] + s * ux, from[1] + s * uy];
    if (mask[Math.floor(y) * width + Math.floor(x)]) continue;
    const cut = Array.from({ length: 2 * reach + 1 }, (_, i) =>
      darkAt(raster, x - (i - reach) * uy, y + (i - reach) * ux),
    );
    const paper = Math.min(cut[0] as number, cut[2 * reach] as number);
    let [peak, area] = [0, 0];
    for (let i = 1; i < 2 * reach; i++) {
      const here = ((cut[i - 1] as number) + (cut[i] as number) + (cut[i + 1] as number)) / 3 - paper;
      if (Math.abs(i - reach) <= reach / 2) peak = Math.max(peak, here);
      area += Math.max(0, here);
    }
    if (peak > 0) {
      peaks.push(peak);
      widths.push(area / peak / pixelsPerMm);
    }
  }
  const darkness = peaks.length > 0 ? middleOf(peaks) : null;
  const ends = (end: readonly [number, number], sx: number, sy: number) =>
    trueEnd(raster, end, [sx, sy], darkness ?? 0, length);
  return { ...line, from: ends(from, -ux, -uy), to: ends(to, ux, uy), darkness, widthMm: middleOf(widths) };
}

/** Walks out from inside a stroke to where it has half its darkness; its fitted end where that lies under print. */
function trueEnd(
  raster: DarkRaster,
  [x, y]: readonly [number, number],
  [dx, dy]: readonly [number, number],
  darkness: number,
  length: number,
): readonly [number, number] {
  const reach = Math.min(END_MM * raster.pixelsPerMm, length / 3);
  let end = -reach;
  for (let s = -reach; s <= reach; s += 0.5) {
    const [px, py] = [x + s * dx, y + s * dy];
    if (raster.mask[Math.floor(py) * raster.width + Math.floor(px)]) return [x, y];
    const here = (darkAt(raster, px, py) + darkAt(raster, px - dy, py + dx) + darkAt(raster, px + dy, py - dx)) / 3;
    if (here < ENDS_AT * darkness) break;
    end = s;
  }
  return end <= -reach ? [x, y] : [x + (end + 0.5) * dx, y + (end + 0.5) * dy];
}
