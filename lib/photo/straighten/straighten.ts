import type { SheetBox } from "../../sheet/sheet-box";
import type { PageFit } from "../page-fit";
import type { GreyPixels } from "../pixels";
import type { StraightPage } from "../straight-page";
import { type Bend, photoFromBent } from "./bend";

/** Places are worked out one in so many along a row, and the rest laid between: off by a few hundredths of a pixel at most. */
const STRIDE = 16;
/** From this many pixels of the photograph to one of the page on, several are read for each. */
const SHRINKING = 1.2;
/** At most so many along a pixel's side. */
const MOST_SAMPLES = 6;
/** White, for a place that the photograph cannot have. */
const WHITE = 255;
/** Places stop so short of the last pixel's middle, for there to be a neighbour on both sides. */
const HAIR = 1e-3;

/**
 * A box of the sheet seen straight on, at so many pixels to the millimetre. Each pixel is read between the photograph's
 * (bilinear), as the mean of several where the page is shown smaller than it was photographed. Past the photograph's edge its
 * last pixel goes on. Of curled paper a `bend` says where its places lie.
 */
export function straighten(
  grey: GreyPixels,
  fit: PageFit,
  box: SheetBox,
  pixelsPerMm: number,
  bend: Bend | null = null,
): StraightPage {
  const width = Math.max(1, Math.round((box.right - box.left) * pixelsPerMm));
  const height = Math.max(1, Math.round((box.bottom - box.top) * pixelsPerMm));
  const samples = samplesPerSide(fit, bend, box, pixelsPerMm);
  const stops = Math.ceil(width / STRIDE) + 1;
  const [rights, downs] = [new Float64Array(stops), new Float64Array(stops)];
  const sums = new Float32Array(width);
  const page = new Uint8Array(width * height);
  const share = 1 / (samples * samples);
  for (let j = 0; j < height; j++) {
    sums.fill(0);
    for (let n = 0; n < samples * samples; n++) {
      const down = box.top + (j + (Math.floor(n / samples) + 0.5) / samples) / pixelsPerMm;
      const left = box.left + ((n % samples) + 0.5) / samples / pixelsPerMm;
      for (let k = 0; k < stops; k++) {
        const at = photoFromBent(fit, bend, [left + (k * STRIDE) / pixelsPerMm, down]);
        rights[k] = at ? at[0] : Number.NaN;
        downs[k] = at ? at[1] : Number.NaN;
      }
      addRow(sums, grey, rights, downs);
    }
    for (let i = 0; i < width; i++) page[j * width + i] = (sums[i] as number) * share + 0.5;
  }
  return { width, height, grey: page, box, pixelsPerMm };
}

/** Adds to each pixel of a row what the photograph has there, between the places of every so manieth; one loop, for its speed. */
function addRow(
  sums: Float32Array,
  { width, height, grey }: GreyPixels,
  rights: Float64Array,
  downs: Float64Array,
): void {
  const [lastX, lastY] = [Math.max(width - 1 - HAIR, 0), Math.max(height - 1 - HAIR, 0)];
  const [next, below] = [width > 1 ? 1 : 0, height > 1 ? width : 0];
  for (let i = 0; i < sums.length; i++) {
    const k = (i / STRIDE) | 0;
    const t = i / STRIDE - k;
    const right = (rights[k] as number) * (1 - t) + (rights[k + 1] as number) * t - 0.5;
    const down = (downs[k] as number) * (1 - t) + (downs[k + 1] as number) * t - 0.5;
    const x = Math.min(Math.max(right, 0), lastX);
    const y = Math.min(Math.max(down, 0), lastY);
    const at = (y | 0) * width + (x | 0);
    const fx = x - (x | 0);
    const upper = (grey[at] as number) * (1 - fx) + (grey[at + next] as number) * fx;
    const lower = (grey[at + below] as number) * (1 - fx) + (grey[at + below + next] as number) * fx;
    const fy = y - (y | 0);
    const value = upper * (1 - fy) + lower * fy;
    // A place behind the camera has no number, and no grey.
    sums[i] = (sums[i] as number) + (value >= 0 ? value : WHITE);
  }
}

/** How many places are read along a pixel's side, from how large the middle of the box stands in the photograph. */
function samplesPerSide(fit: PageFit, bend: Bend | null, box: SheetBox, pixelsPerMm: number): number {
  const [x, y, step] = [(box.left + box.right) / 2, (box.top + box.bottom) / 2, 1 / pixelsPerMm];
  const [here, right, below] = [
    photoFromBent(fit, bend, [x, y]),
    photoFromBent(fit, bend, [x + step, y]),
    photoFromBent(fit, bend, [x, y + step]),
  ];
  if (!here || !right || !below) return 1;
  const scale = Math.max(
    Math.hypot(right[0] - here[0], right[1] - here[1]),
    Math.hypot(below[0] - here[0], below[1] - here[1]),
  );
  return scale < SHRINKING ? 1 : Math.min(Math.ceil(scale), MOST_SAMPLES);
}
