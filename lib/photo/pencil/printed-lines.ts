import { CAP_SHARE } from "../../drawing/lettering-box";
import { CAP_HEIGHT, letteredWidthMm } from "../../drawing/paper/letter-widths";
import { HALO_MM } from "../../drawing/paper/page-colours";
import { pageMarks, type TextMark } from "../../drawing/paper/page-marks";
import type { PaperPage } from "../../drawing/paper/paper-page";
import type { SheetPlace } from "../../sheet/place-drawings";
import { overlap, type SheetBox } from "../../sheet/sheet-box";

/** A line that the printer has put on the page, as straight steps, millimetres of the sheet. */
export type PrintedLine = {
  readonly places: readonly SheetPlace[];
  readonly widthMm: number;
  /** Lines printed with one pen have one `pen`. */
  readonly pen: string;
  /** Dashes and gaps from its beginning, millimetres; empty for an unbroken line. */
  readonly dashMm: readonly number[];
};

/** What is printed on a part of a page: its lines, the boxes of its letters, and the outlines of what is black or toned. */
export type Printed = {
  readonly lines: readonly PrintedLine[];
  readonly letters: readonly SheetBox[];
  readonly areas: readonly (readonly SheetPlace[])[];
};

/** Steps that a bend is cut into. */
const BEND_STEPS = 8;
/** Letters hang below their foot by at most this share of their capitals' height. */
const HANGS = 0.3;

/** The printed lines, letters and areas of a page that reach into a box. The floor's tone is too light to be taken for a stroke. */
export function printedLines(page: PaperPage, box: SheetBox): Printed {
  const lines: PrintedLine[] = [];
  const letters: SheetBox[] = [];
  const areas: (readonly SheetPlace[])[] = [];
  for (const mark of pageMarks(page)) {
    if (mark.kind === "text") {
      const room = lettersBox(mark);
      if (overlap(room, box)) letters.push(room);
    } else if (mark.kind === "area") {
      if (mark.tone === "ink" || mark.tone === "wall")
        areas.push(...pathPlaces(mark.d).filter((places) => overlap(around(places), box)));
    } else {
      const pen = `${mark.widthMm} ${mark.strength} ${mark.pencil}`;
      for (const places of pathPlaces(mark.d))
        if (overlap(around(places), box)) lines.push({ places, widthMm: mark.widthMm, pen, dashMm: mark.dashMm });
    }
  }
  return { lines, letters, areas };
}

/** The straight steps of SVG path data of moves, lines and bends, one list for each move. */
function pathPlaces(d: string): readonly (readonly SheetPlace[])[] {
  const runs: SheetPlace[][] = [];
  for (const [, letter, data] of d.matchAll(/([MLCZ])([^MLCZ]*)/g)) {
    const numbers = (data ?? "").match(/-?[\d.]+(e-?\d+)?/g)?.map(Number) ?? [];
    const run = runs.at(-1);
    const here = run?.at(-1);
    if (letter === "M") runs.push([[numbers[0] ?? 0, numbers[1] ?? 0]]);
    else if (letter === "L") run?.push([numbers[0] ?? 0, numbers[1] ?? 0]);
    else if (letter === "Z" && run?.[0]) run.push(run[0]);
    else if (letter === "C" && run && here) run.push(...bend(here, numbers));
  }
  return runs;
}

function bend([x0, y0]: SheetPlace, [x1 = 0, y1 = 0, x2 = 0, y2 = 0, x3 = 0, y3 = 0]: readonly number[]): SheetPlace[] {
  return Array.from({ length: BEND_STEPS }, (_, i): SheetPlace => {
    const t = (i + 1) / BEND_STEPS;
    const [a, b, c, e] = [(1 - t) ** 3, 3 * t * (1 - t) ** 2, 3 * t * t * (1 - t), t ** 3];
    return [a * x0 + b * x1 + c * x2 + e * x3, a * y0 + b * y1 + c * y2 + e * y3];
  });
}

function lettersBox({ text, at: [x, y], anchor, face, sizeMm, breaksLines }: TextMark): SheetBox {
  const height = sizeMm * (face === "drafting" ? CAP_SHARE : CAP_HEIGHT[face]);
  const width = letteredWidthMm(text, sizeMm * CAP_HEIGHT[face], face);
  const left = x - (anchor === "start" ? 0 : anchor === "end" ? width : width / 2);
  const halo = breaksLines ? HALO_MM : 0;
  const hangs = /[gjpqy,;]/.test(text) ? HANGS * height : 0;
  return { left: left - halo, right: left + width + halo, top: y - height - halo, bottom: y + hangs + halo };
}

function around(places: readonly SheetPlace[]): SheetBox {
  let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const [x, y] of places)
    [left, top, right, bottom] = [Math.min(left, x), Math.min(top, y), Math.max(right, x), Math.max(bottom, y)];
  // A level or upright line has no area, and would overlap nothing.
  return { left: left - 1, top: top - 1, right: right + 1, bottom: bottom + 1 };
}
