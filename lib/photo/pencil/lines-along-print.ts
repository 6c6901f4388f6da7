import type { SheetPlace } from "../../sheet/place-drawings";
import type { SheetBox } from "../../sheet/sheet-box";
import { type DarkRaster, darkAt, middleOf } from "./dark-at";
import type { Straight } from "./fit-straight";
import type { Printed, PrintedLine } from "./printed-lines";

/** From one cut across the print to the next, and how far a cut reaches to each side, millimetres. */
const STEP_MM = 0.25;
const REACH_MM = 1.1;
/** Cuts that are put together, millimetres along the line. */
const TOGETHER_MM = 1.5;
/** A pencil's line along print is at least this long, millimetres. */
const SHORTEST_MM = 2;
/** Where a stretch ends because another line comes near, it may go on to it, millimetres. */
const GOES_ON_MM = 1.2;
/** Darkness times width that a pencil adds to print at least, millimetres: a line 0.4 mm wide of 3 % of white. */
const LEAST_MM = 0.012;
/** And that times the line's length, square millimetres: the fainter it is, the longer it must be. */
const LEAST_MM2 = 0.13;
/** And at least so many times what cuts of bare print vary by, and over this share of what the pen prints. */
const OVER_SPREAD = 1.8;
const OVER_PRINT = 0.06;
/** Cuts of one pen needed to know how dark it prints. */
const CUTS_NEEDED = 12;
/** Most lines of a pen are bare for this share of their length; its darkness is taken from the lightest. */
const BARE_SHARE = 0.35;
/** A dash's ends are neither dash nor gap for this far, millimetres. */
const DASH_END_MM = 0.45;
/** Lines shorter than this are ticks and symbols, millimetres. */
const SHORTEST_PRINT_MM = 4;
/** Print nearer than this to another line along it cannot be told from it, millimetres. */
const CLEAR_MM = 1.9;
const ALONG = 0.25;

type Cut = {
  readonly s: number;
  readonly x: number;
  readonly y: number;
  readonly area: number;
  readonly off: number;
  readonly dash: boolean;
};
type Looked = {
  readonly line: PrintedLine;
  readonly from: SheetPlace;
  readonly to: SheetPlace;
  readonly cuts: readonly Cut[];
};

/**
 * Pencil lines drawn along printed ones, which the mask over the print hides: where a printed line is darker and wider than
 * others of its pen. `raster.dark` still shows the print. `drawn` are lines found elsewhere; where they cross, nothing is said.
 * A pencil on the heaviest print is not seen.
 */
export function linesAlongPrint(
  printed: Printed,
  drawn: readonly Straight[],
  raster: DarkRaster,
  box: SheetBox,
): readonly Straight[] {
  const rulings = printed.lines.flatMap(straightPieces);
  const looked = rulings.flatMap((line) => cutsOf(line, { ...printed, lines: rulings }, drawn, raster, box));
  const pens = new Map<string, Cut[]>();
  for (const { line, cuts } of looked) {
    const all = pens.get(line.pen) ?? [];
    pens.set(line.pen, all);
    for (const cut of cuts) if (cut.dash) all.push(cut);
  }
  const bare = new Map([...pens].map(([pen, cuts]) => [pen, bareArea(cuts)] as const));
  return looked.flatMap((each) => {
    const known = bare.get(each.line.pen);
    return known ? darkerStretches(each, known, raster.pixelsPerMm) : [];
  });
}

function bareArea(cuts: readonly Cut[]): { readonly area: number; readonly spread: number } | null {
  if (cuts.length < CUTS_NEEDED) return null;
  const sorted = cuts.map(({ area }) => area).sort((a, b) => a - b);
  const area = sorted[Math.floor(sorted.length * BARE_SHARE)] as number;
  const low = sorted[Math.floor((sorted.length * BARE_SHARE) / 4)] as number;
  return { area, spread: area - low };
}

function cutsOf(
  line: PrintedLine,
  printed: Printed,
  drawn: readonly Straight[],
  raster: DarkRaster,
  box: SheetBox,
): readonly Looked[] {
  const { pixelsPerMm } = raster;
  const [first, last] = [line.places[0], line.places.at(-1)];
  if (!first || !last) return [];
  const length = Math.hypot(last[0] - first[0], last[1] - first[1]);
  if (length < SHORTEST_PRINT_MM) return [];
  const [ux, uy] = [(last[0] - first[0]) / length, (last[1] - first[1]) / length];
  // Only print that comes near it at all is looked at again at every cut.
  const others = printed.lines
    .filter((other) => other !== line)
    .flatMap(({ places }) => stepsOf(places))
    .filter(([a, b]) => comeNear(a, b, first, last));
  const reach = Math.round(REACH_MM * pixelsPerMm);
  const cuts: Cut[] = [];
  for (let s = STEP_MM; s < length - STEP_MM; s += STEP_MM) {
    const place: SheetPlace = [first[0] + s * ux, first[1] + s * uy];
    const dash = dashAt(line.dashMm, s);
    if (dash === null || others.some(([a, b]) => distanceTo(place, a, b) < CLEAR_MM)) continue;
    if (
      printed.letters.some(
        (b) => place[0] > b.left - 1 && place[0] < b.right + 1 && place[1] > b.top - 1 && place[1] < b.bottom + 1,
      )
    )
      continue;
    const [x, y] = [(place[0] - box.left) * pixelsPerMm, (place[1] - box.top) * pixelsPerMm];
    if (x < 2 * reach || y < 2 * reach || x > raster.width - 2 * reach || y > raster.height - 2 * reach) continue;
    if (drawn.some((stroke) => crosses(stroke, [x, y], [ux, uy], reach))) continue;
    // Tone on one side, or light that falls off, is no pencil: what counts is what stands over the cut's two ends.
    const [left, right] = [-reach, reach].map((i) => darkAt(raster, x - i * uy, y + i * ux)) as [number, number];
    let [area, moment] = [0, 0];
    for (let i = -reach; i <= reach; i++) {
      const here = darkAt(raster, x - i * uy, y + i * ux) - (left + right) / 2 - ((right - left) * i) / (2 * reach);
      area += here;
      moment += here * i;
    }
    cuts.push({ s, x, y, area: area / pixelsPerMm, off: moment / pixelsPerMm, dash });
  }
  return [{ line, from: first, to: last, cuts }];
}

/** The stretches where a line is darker than bare print of its pen. */
function darkerStretches(
  { cuts, from, to }: Looked,
  bare: { readonly area: number; readonly spread: number },
  pixelsPerMm: number,
): readonly Straight[] {
  const excess = cuts.map((cut) => cut.area - (cut.dash ? bare.area : 0));
  const level = cuts.map(({ s }) =>
    middleOf(excess.filter((_, k) => Math.abs((cuts[k] as Cut).s - s) <= TOGETHER_MM / 2)),
  );
  const least = Math.max(LEAST_MM, OVER_SPREAD * bare.spread) + OVER_PRINT * bare.area;
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const [ux, uy] = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
  const found: Straight[] = [];
  let began = -1;
  for (let k = 0; k <= cuts.length; k++) {
    const dark = k < cuts.length && (level[k] as number) > least;
    if (dark && began < 0) began = k;
    if (dark || began < 0) continue;
    const run = cuts.slice(began, k);
    const [a, b] = [run[0] as Cut, run.at(-1) as Cut];
    const goesOn = (next: Cut | undefined, s: number) =>
      !next || Math.abs(next.s - s) > 2 * STEP_MM ? GOES_ON_MM * pixelsPerMm : 0;
    const [before, after] = [goesOn(cuts[began - 1], a.s), goesOn(cuts[k], b.s)];
    const over = excess.slice(began, k);
    began = -1;
    if (b.s - a.s < SHORTEST_MM) continue;
    const whole = over.reduce((sum, one) => sum + one, 0);
    if ((whole / run.length) * (b.s - a.s) < LEAST_MM2) continue;
    const off = run.reduce((sum, one) => sum + one.off, 0) / whole;
    const beside = Math.max(-0.6 * pixelsPerMm, Math.min(0.6 * pixelsPerMm, off));
    const end = (x: number, y: number, on: number) => [x - beside * uy + on * ux, y + beside * ux + on * uy] as const;
    const [start, stop] = [end(a.x, a.y, -before), end(b.x, b.y, after)];
    found.push({ from: start, to: stop, knots: [start, stop], weight: run.length, off2: 0 });
  }
  return found;
}

/** Whether a place of a dashed line lies in a dash (true), in a gap, or between the two (null). */
function dashAt(dashMm: readonly number[], s: number): boolean | null {
  const period = dashMm.reduce((sum, one) => sum + one, 0);
  if (period === 0) return true;
  let at = s % period;
  for (let k = 0; k < dashMm.length; k++) {
    const long = dashMm[k] as number;
    if (at < long) return Math.min(at, long - at) < DASH_END_MM ? null : k % 2 === 0;
    at -= long;
  }
  return null;
}

/** A line drawn by hand is one piece if it keeps near to the straight way between its ends; else each of its steps is one. */
function straightPieces(line: PrintedLine): readonly PrintedLine[] {
  if (line.places.length < 2) return [];
  if (isStraight(line.places)) return [line];
  return stepsOf(line.places).map((places) => ({ ...line, places }));
}

function isStraight(places: readonly SheetPlace[]): boolean {
  const [first, last] = [places[0] as SheetPlace, places.at(-1) as SheetPlace];
  return places.every((place) => distanceTo(place, first, last) < 0.4);
}

function crosses(
  { from, to }: Straight,
  [x, y]: readonly [number, number],
  [ux, uy]: readonly [number, number],
  reach: number,
): boolean {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const turn = Math.abs(((to[0] - from[0]) * uy - (to[1] - from[1]) * ux) / length);
  return turn > ALONG && distanceTo([x, y], from, to) < 1.3 * reach;
}

function comeNear(a: SheetPlace, b: SheetPlace, c: SheetPlace, d: SheetPlace): boolean {
  return [0, 1].every((k) => {
    const [a1, b1, c1, d1] = [a, b, c, d].map((place) => place[k] as number) as [number, number, number, number];
    return Math.min(a1, b1) <= Math.max(c1, d1) + CLEAR_MM && Math.min(c1, d1) <= Math.max(a1, b1) + CLEAR_MM;
  });
}

function stepsOf(places: readonly SheetPlace[]): readonly (readonly [SheetPlace, SheetPlace])[] {
  return places.slice(1).map((to, k) => [places[k] as SheetPlace, to] as const);
}

function distanceTo([x, y]: SheetPlace, a: SheetPlace, b: SheetPlace): number {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const length2 = dx * dx + dy * dy;
  const t = length2 > 0 ? Math.max(0, Math.min(1, ((x - a[0]) * dx + (y - a[1]) * dy) / length2)) : 0;
  return Math.hypot(x - a[0] - t * dx, y - a[1] - t * dy);
}
