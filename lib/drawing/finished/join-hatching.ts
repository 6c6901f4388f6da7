import { between } from "../../geometry/vector";
import type { PicturePoint } from "../../stage/frame";
import type { VisibleLine } from "../hidden-lines/visible-lines";
import type { HatchLine } from "./hatch-lines";

export type HatchStroke = { readonly id: string; readonly points: readonly [PicturePoint, PicturePoint] };

/** Pieces of one row this near are one stroke, millimetres of paper; shorter strokes are left out. */
const NEAR_MM = 0.05;
const SHORTEST_MM = 0.7;
/** Strokes stop this short of what bounds them, so that the tone stays inside its face, millimetres of paper. */
const SHORT_BY_MM = 0.15;

/** The visible pieces of hatching as strokes, each row's pieces joined over the faces it runs on, in the order of the rows. */
export function joinHatching(
  pieces: readonly VisibleLine[],
  lines: readonly HatchLine[],
  mm: number,
): readonly HatchStroke[] {
  const rows = new Map<string, VisibleLine[]>();
  for (const piece of pieces) {
    const { family } = lines[piece.line] as HatchLine;
    const row = rows.get(family);
    if (row) row.push(piece);
    else rows.set(family, [piece]);
  }
  return [...rows].flatMap(([family, row]) => {
    // Rows lean up: their pieces in order of height are in order along the row.
    row.sort((a, b) => a.from[1] - b.from[1]);
    const joined: [PicturePoint, PicturePoint][] = [];
    for (const { from, to } of row) {
      const last = joined.at(-1);
      if (last && from[1] - last[1][1] < NEAR_MM * mm) last[1] = to[1] > last[1][1] ? to : last[1];
      else joined.push([from, to]);
    }
    return joined.flatMap(([from, to], i): HatchStroke[] => {
      const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
      if (length < SHORTEST_MM * mm) return [];
      const cut = (SHORT_BY_MM * mm) / length;
      return [{ id: `${family}.${i + 1}`, points: [between(from, to, cut), between(from, to, 1 - cut)] }];
    });
  });
}
