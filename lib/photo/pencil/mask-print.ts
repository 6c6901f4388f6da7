import type { SheetPlace } from "../../sheet/place-drawings";
import type { SheetBox } from "../../sheet/sheet-box";
import type { Printed } from "./printed-lines";

/** Print may lie this far from where the page has it: what straightening leaves over, and the blur of its edge. Millimetres. */
const BESIDE_MM = 0.4;
const BESIDE_LETTERS_MM = 0.3;

/** Where print lies, and nothing can be said of what a pencil did there: 1, else 0. */
export type PrintMask = Uint8Array;

type Raster = { readonly width: number; readonly height: number; readonly box: SheetBox; readonly pixelsPerMm: number };

export function maskPrint(printed: Printed, raster: Raster): PrintMask {
  const mask = new Uint8Array(raster.width * raster.height);
  for (const { places, widthMm } of printed.lines)
    for (let k = 1; k < places.length; k++)
      stamp(mask, raster, places[k - 1] as SheetPlace, places[k] as SheetPlace, widthMm / 2 + BESIDE_MM);
  const { box, pixelsPerMm, width, height } = raster;
  for (const letters of printed.letters) {
    const left = Math.max(0, Math.floor((letters.left - BESIDE_LETTERS_MM - box.left) * pixelsPerMm));
    const right = Math.min(width, Math.ceil((letters.right + BESIDE_LETTERS_MM - box.left) * pixelsPerMm));
    const top = Math.max(0, Math.floor((letters.top - BESIDE_LETTERS_MM - box.top) * pixelsPerMm));
    const bottom = Math.min(height, Math.ceil((letters.bottom + BESIDE_LETTERS_MM - box.top) * pixelsPerMm));
    for (let y = top; y < bottom; y++) if (left < right) mask.fill(1, y * width + left, y * width + right);
  }
  for (const outline of printed.areas) {
    fill(mask, raster, outline);
    outline.forEach((place, k) => {
      stamp(mask, raster, place, outline[(k + 1) % outline.length] as SheetPlace, BESIDE_MM);
    });
  }
  return mask;
}

/** Marks every pixel whose middle lies inside an outline (an odd number of its edges to the left of it). */
function fill(mask: PrintMask, { width, height, box, pixelsPerMm }: Raster, outline: readonly SheetPlace[]): void {
  const ends = outline.map(([x, y]) => [(x - box.left) * pixelsPerMm, (y - box.top) * pixelsPerMm] as const);
  const downs = ends.map(([, y]) => y);
  for (let y = Math.max(0, Math.floor(Math.min(...downs))); y < Math.min(height, Math.max(...downs)); y++) {
    const row = y + 0.5;
    const crossed = ends.flatMap(([ax, ay], k): number[] => {
      const [bx, by] = ends[(k + 1) % ends.length] as readonly [number, number];
      return ay > row === by > row ? [] : [ax + ((bx - ax) * (row - ay)) / (by - ay)];
    });
    crossed.sort((a, b) => a - b);
    for (let k = 0; k + 1 < crossed.length; k += 2) {
      const from = Math.max(0, Math.ceil((crossed[k] as number) - 0.5));
      const to = Math.min(width, Math.floor((crossed[k + 1] as number) + 0.5));
      if (from < to) mask.fill(1, y * width + from, y * width + to);
    }
  }
}

/** Marks every pixel whose middle lies within `reach` millimetres of a stretch. */
function stamp(mask: PrintMask, raster: Raster, a: SheetPlace, b: SheetPlace, reach: number): void {
  const { width, height, box, pixelsPerMm } = raster;
  const [ax, ay] = [(a[0] - box.left) * pixelsPerMm, (a[1] - box.top) * pixelsPerMm];
  const [bx, by] = [(b[0] - box.left) * pixelsPerMm, (b[1] - box.top) * pixelsPerMm];
  const r = reach * pixelsPerMm;
  const [dx, dy] = [bx - ax, by - ay];
  const length2 = dx * dx + dy * dy;
  const top = Math.max(0, Math.floor(Math.min(ay, by) - r));
  const bottom = Math.min(height - 1, Math.ceil(Math.max(ay, by) + r));
  for (let y = top; y <= bottom; y++) {
    // Of a long slanting stretch only what is near on this row is looked at.
    const [from, to] = rowReach(ax, ay, bx, by, y + 0.5, r);
    for (let x = Math.max(0, Math.floor(from)); x <= Math.min(width - 1, Math.ceil(to)); x++) {
      const [px, py] = [x + 0.5 - ax, y + 0.5 - ay];
      const t = length2 > 0 ? Math.max(0, Math.min(1, (px * dx + py * dy) / length2)) : 0;
      if ((px - t * dx) ** 2 + (py - t * dy) ** 2 <= r * r) mask[y * width + x] = 1;
    }
  }
}

function rowReach(ax: number, ay: number, bx: number, by: number, y: number, r: number): readonly [number, number] {
  const [low, high] = [Math.min(ay, by), Math.max(ay, by)];
  if (high - low < r) return [Math.min(ax, bx) - r, Math.max(ax, bx) + r];
  const xAt = (row: number) => ax + ((bx - ax) * (Math.max(low, Math.min(high, row)) - ay)) / (by - ay);
  const [one, other] = [xAt(y - r), xAt(y + r)];
  return [Math.min(one, other) - r, Math.max(one, other) + r];
}
