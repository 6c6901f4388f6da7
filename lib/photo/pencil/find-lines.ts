import type { PencilLine } from "../drawing-reading";
import type { StraightPage } from "../straight-page";
import { type DarkRaster, darkAt, middleOf } from "./dark-at";
import { type Cross, findCrosses } from "./find-crosses";
import { fitStraight } from "./fit-straight";
import { flattenLight } from "./flatten-light";
import { joinStraight } from "./join-straight";
import { linesAlongPrint } from "./lines-along-print";
import { maskPrint, type PrintMask } from "./mask-print";
import { measureStroke, type Stroke } from "./measure-stroke";
import type { Printed } from "./printed-lines";
import { findRidges } from "./ridges";
import { traceRidges } from "./trace-ridges";

/** Lines this much fainter than the drawing's usual ones are what the eraser left. */
const GHOST_SHARE = 0.38;
/** Wider strokes are smudges or shading, millimetres. */
const WIDEST_MM = 1.3;
/** As dark as a faint stroke, where a line's gap is looked at. */
const DARK = 0.045;
/** Shorter lines are specks and parts of letters, millimetres. */
const SHORTEST_MM = 1.2;

/** From end to end of a stroke of a small cross, millimetres; and how clear a cross is of which only one is seen. */
const ARMS_MM = [2.8, 5.5] as const;
const HALF_HIDDEN = 0.6;

export type Strokes = {
  readonly lines: readonly PencilLine[];
  readonly crosses: readonly Cross[];
  readonly mask: PrintMask;
};

type Pixel = readonly [x: number, y: number];

/**
 * The straight pencil lines of a page, millimetres of the sheet; what is printed there is left out. Faint drawings are read as
 * well as dark ones, since the threshold follows the paper's noise. Empty where nothing is drawn.
 */
export function findLines(page: StraightPage, printed: Printed): readonly PencilLine[] {
  return findStrokes(page, printed).lines;
}

/** The same with the small crosses among them, and what of the page print hides. */
export function findStrokes(page: StraightPage, printed: Printed): Strokes {
  const { width, height, pixelsPerMm, box } = page;
  const dark = flattenLight(page);
  const mask = maskPrint(printed, page);
  // Print is painted over as paper: a stroke then ends at it, and is joined again on its other side.
  const bare = dark.map((value, i) => (mask[i] ? 0 : value));
  const ridges = findRidges(bare, width, height, pixelsPerMm);
  const pieces = traceRidges(ridges, pixelsPerMm).flatMap((chain) => fitStraight(chain, pixelsPerMm));
  const raster = { dark: bare, mask, width, height, pixelsPerMm };
  const where = { pixelsPerMm, covered: (a: Pixel, b: Pixel) => covered(raster, a, b) };
  const clear = joinStraight(pieces, where);
  const joined = joinStraight([...clear, ...linesAlongPrint(printed, clear, { ...raster, dark }, box)], where);
  const measured = joined
    .map((line) => measureStroke(line, raster))
    .filter(
      ({ widthMm, from, to }) =>
        widthMm <= WIDEST_MM && Math.hypot(to[0] - from[0], to[1] - from[1]) >= SHORTEST_MM * pixelsPerMm,
    );
  const usual = usualDarkness(measured);
  const lines = measured
    .filter(({ darkness }) => darkness === null || darkness >= GHOST_SHARE * usual)
    .map(
      ({ from, to, darkness, widthMm, off2 }): PencilLine => ({
        from: [box.left + from[0] / pixelsPerMm, box.top + from[1] / pixelsPerMm],
        to: [box.left + to[0] / pixelsPerMm, box.top + to[1] / pixelsPerMm],
        darkness: darkness ?? usual,
        widthMm,
        straightMm: Math.sqrt(off2) / pixelsPerMm,
      }),
    );
  const strong = middleOf(
    ridges.points.filter(({ strength }) => strength >= ridges.begins).map(({ strength }) => strength),
  );
  const { strength } = ridges;
  const field = { strength, mask, width, height, pixelsPerMm, box, usual: strong };
  const crosses = lines.length === 0 ? [] : [...findCrosses(field), ...halfHidden(lines, page, mask)];
  return { lines, crosses, mask };
}

/** Crosses of which one stroke lies along print, and the middle of the other under it. */
function halfHidden(lines: readonly PencilLine[], { box, pixelsPerMm, width }: StraightPage, mask: PrintMask): Cross[] {
  return lines.flatMap(({ from, to }) => {
    const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
    const at = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2] as const;
    const pixel = Math.floor((at[1] - box.top) * pixelsPerMm) * width + Math.floor((at[0] - box.left) * pixelsPerMm);
    const isArm = length >= ARMS_MM[0] && length <= ARMS_MM[1] && mask[pixel] === 1;
    return isArm ? [{ at, clear: HALF_HIDDEN }] : [];
  });
}

/** The share of the straight way between two places that lies under print, or is as dark as a stroke. */
function covered(raster: DarkRaster, a: Pixel, b: Pixel): number {
  const { mask, width, height } = raster;
  const steps = Math.max(1, Math.ceil(Math.hypot(b[0] - a[0], b[1] - a[1])));
  let under = 0;
  for (let k = 0; k < steps; k++) {
    const t = (k + 0.5) / steps;
    const [px, py] = [a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1])];
    const [x, y] = [Math.floor(px), Math.floor(py)];
    if (!(x >= 0 && y >= 0 && x < width && y < height)) continue;
    const near = [-1, 0, 1].flatMap((i) => [-1, 0, 1].map((j) => darkAt(raster, px + i, py + j)));
    if (mask[y * width + x] || near.reduce((sum, one) => sum + one, 0) / near.length > DARK) under++;
  }
  return under / steps;
}

/** The darkness that half of the drawing's length is darker than. */
function usualDarkness(lines: readonly Stroke[]): number {
  const sorted = lines
    .map(({ from, to, darkness }) => ({
      darkness: darkness ?? 0,
      length: Math.hypot(to[0] - from[0], to[1] - from[1]),
    }))
    .sort((a, b) => b.darkness - a.darkness);
  const whole = sorted.reduce((sum, { length }) => sum + length, 0);
  let seen = 0;
  for (const { darkness, length } of sorted) {
    seen += length;
    if (seen >= whole / 2) return darkness;
  }
  return 0;
}
