import type { PracticeSheet } from "../../drawing/practice-sheet/lay-out-practice-sheet";
import { studentPage } from "../../drawing/practice-sheet/student-page";
import { markerPlaces } from "../../sheet/marker-places";
import { paperSize } from "../../sheet/paper-size";
import type { SheetPlace } from "../../sheet/place-drawings";
import type { SheetBox } from "../../sheet/sheet-box";
import { type Printed, type PrintedLine, printedLines } from "../pencil/printed-lines";
import { boxCorners } from "./seen-box";

/** A short straight stretch of print, by which the paper's own place is told across it. */
export type Guide = {
  /** Its middle, millimetres of the sheet. */
  readonly at: SheetPlace;
  /** Of length 1; offsets are told to the right of it, seen along it, which on a sheet is [-along[1], along[0]]. */
  readonly along: readonly [number, number];
  readonly lengthMm: number;
  /** Of a line; null for the edge of a marker, which is black on the side that offsets are counted to. */
  readonly widthMm: number | null;
};

/** A stretch's length at most and at least, and how far from one to the next of a line. */
const LONGEST_MM = 4;
const SHORTEST_MM = 1.6;
const APART_MM = 5;
/** Off a line's ends, and from other print along it: there a bent sheet may already show another thing. */
const END_MM = 0.6;
/** No other print may lie so near across a stretch. */
const CLEAR_MM = 1.2;
/** What is off the stretch by less is the same line, or part of it. */
const SAME_MM = 0.06;
/** Off a marker's corners, and stretches along each of its sides. */
const CORNER_MM = 1.5;
const STRETCHES = 3;

/** The stretches of a sheet's printed lines that stand alone. */
export function lineGuides(sheet: PracticeSheet): readonly Guide[] {
  const { widthMm, heightMm } = paperSize(sheet.paper);
  const printed = printedLines(studentPage(sheet, null), { left: 0, top: 0, right: widthMm, bottom: heightMm });
  const pieces = piecesOf(printed);
  return printed.lines.flatMap(stretches).filter((guide) => standsAlone(guide, pieces));
}

/** The sides of a sheet's markers, each in a few stretches. */
export function markerGuides({ paper }: Pick<PracticeSheet, "paper">): readonly Guide[] {
  return markerPlaces(paper).flatMap(({ box }) => {
    const corners = boxCorners(box);
    return corners.flatMap((from, i) => {
      const to = corners[(i + 1) % corners.length] as SheetPlace;
      const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
      const along = [(to[0] - from[0]) / length, (to[1] - from[1]) / length] as const;
      const lengthMm = (length - 2 * CORNER_MM) / STRETCHES;
      return Array.from({ length: STRETCHES }, (_, k): Guide => {
        const way = CORNER_MM + (k + 0.5) * lengthMm;
        return { at: [from[0] + way * along[0], from[1] + way * along[1]], along, lengthMm, widthMm: null };
      });
    });
  });
}

/** The straight stretches of a line: of a dashed one within its dashes. */
function stretches({ places, widthMm, dashMm }: PrintedLine): readonly Guide[] {
  const ways = [0];
  for (let k = 1; k < places.length; k++) {
    const [a, b] = [places[k - 1] as SheetPlace, places[k] as SheetPlace];
    ways.push((ways[k - 1] as number) + Math.hypot(b[0] - a[0], b[1] - a[1]));
  }
  const whole = ways.at(-1) as number;
  const guides: Guide[] = [];
  for (const [from, to] of dashes(whole, dashMm)) {
    const room = to - from - 2 * END_MM;
    if (room < SHORTEST_MM) continue;
    const count = Math.max(1, Math.floor((room - LONGEST_MM) / APART_MM) + 1);
    const lengthMm = Math.min(LONGEST_MM, room);
    for (let n = 0; n < count; n++) {
      const middle = from + END_MM + (room * (n + 0.5)) / count;
      const guide = straightPart(places, ways, middle - lengthMm / 2, middle + lengthMm / 2);
      if (guide) guides.push({ ...guide, widthMm });
    }
  }
  return guides;
}

function dashes(whole: number, dashMm: readonly number[]): readonly (readonly [number, number])[] {
  const round = dashMm.reduce((sum, each) => sum + each, 0);
  if (!(round > 0)) return [[0, whole]];
  const found: [number, number][] = [];
  for (let start = 0; start < whole; start += round) {
    let way = start;
    for (const [i, length] of dashMm.entries()) {
      if (i % 2 === 0 && way < whole) found.push([way, Math.min(way + length, whole)]);
      way += length;
    }
  }
  return found;
}

/** A part of a line by its ways along it; null where it bends. */
function straightPart(
  places: readonly SheetPlace[],
  ways: readonly number[],
  from: number,
  to: number,
): Omit<Guide, "widthMm"> | null {
  const [a, b] = [placeAt(places, ways, from), placeAt(places, ways, to)];
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  if (!(length >= SHORTEST_MM * 0.99)) return null;
  const along = [(b[0] - a[0]) / length, (b[1] - a[1]) / length] as const;
  const isStraight = places.every((place, k) => {
    const way = ways[k] as number;
    return way <= from || way >= to || Math.abs(aside(a, along, place)) < SAME_MM;
  });
  return isStraight ? { at: [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2], along, lengthMm: length } : null;
}

function placeAt(places: readonly SheetPlace[], ways: readonly number[], way: number): SheetPlace {
  const k = Math.max(
    1,
    ways.findIndex((each) => each >= way),
  );
  const [a, b] = [places[k - 1] as SheetPlace, places[k] as SheetPlace];
  const [start, end] = [ways[k - 1] as number, ways[k] as number];
  const t = end > start ? (way - start) / (end - start) : 0;
  return [a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1])];
}

function aside([x, y]: SheetPlace, [right, down]: Guide["along"], [px, py]: SheetPlace): number {
  return (py - y) * right - (px - x) * down;
}

type Piece = { readonly from: SheetPlace; readonly to: SheetPlace; readonly box: SheetBox };

function piecesOf({ lines, letters, areas }: Printed): readonly Piece[] {
  const outlines = [
    ...lines.map(({ places }) => places),
    ...letters.map((box) => closed(boxCorners(box))),
    ...areas.map(closed),
  ];
  return outlines.flatMap((places) =>
    places.slice(1).map((to, k): Piece => {
      const from = places[k] as SheetPlace;
      const [left, right] = [Math.min(from[0], to[0]), Math.max(from[0], to[0])];
      return { from, to, box: { left, right, top: Math.min(from[1], to[1]), bottom: Math.max(from[1], to[1]) } };
    }),
  );
}

function closed(places: readonly SheetPlace[]): readonly SheetPlace[] {
  return places[0] ? [...places, places[0]] : places;
}

/** Whether nothing else is printed beside a stretch, or across it. */
function standsAlone({ at, along, lengthMm }: Guide, pieces: readonly Piece[]): boolean {
  const half = lengthMm / 2 + END_MM;
  const reach = half + CLEAR_MM;
  return !pieces.some(({ from, to, box }) => {
    if (box.left > at[0] + reach || box.right < at[0] - reach) return false;
    if (box.top > at[1] + reach || box.bottom < at[1] - reach) return false;
    let [s0, t0] = [(from[0] - at[0]) * along[0] + (from[1] - at[1]) * along[1], aside(at, along, from)];
    let [s1, t1] = [(to[0] - at[0]) * along[0] + (to[1] - at[1]) * along[1], aside(at, along, to)];
    if (s0 > s1) [s0, t0, s1, t1] = [s1, t1, s0, t0];
    if (s1 < -half || s0 > half) return false;
    // Only what of it lies beside the stretch.
    const slope = s1 > s0 ? (t1 - t0) / (s1 - s0) : 0;
    const [ta, tb] = [s0 < -half ? t0 + slope * (-half - s0) : t0, s1 > half ? t1 - slope * (s1 - half) : t1];
    if (Math.max(Math.abs(ta), Math.abs(tb)) < SAME_MM) return false;
    return Math.min(ta, tb) < CLEAR_MM && Math.max(ta, tb) > -CLEAR_MM;
  });
}
