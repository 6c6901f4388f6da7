import type { PicturePoint } from "../../stage/frame";
import type { VisibleLine } from "../hidden-lines/visible-lines";
import type { HatchFamily, HatchLine } from "./hatch-family";
import { alongRow, onRow } from "./hatch-rows";

export type HatchStroke = { readonly id: string; readonly points: readonly [PicturePoint, PicturePoint] };

/** Pieces of one row this near are one stroke, millimetres of paper; shorter strokes are left out. */
const NEAR_MM = 0.05;
const SHORTEST_MM = 0.7;
/** Strokes stop this short of what bounds them, so that the tone stays inside its face, millimetres of paper. */
const SHORT_BY_MM = 0.15;

/** The visible pieces of hatching as strokes, each row's pieces joined over the faces it runs on, row by row. */
export function joinHatching(
  pieces: readonly VisibleLine[],
  lines: readonly HatchLine[],
  mm: number,
): readonly HatchStroke[] {
  const rows = new Map<string, { family: HatchFamily; row: number; stretches: [number, number][] }>();
  for (const { line, from, to } of pieces) {
    const { family, row } = lines[line] as HatchLine;
    const key = `${family.name}.${row}`;
    const entry = rows.get(key) ?? { family, row, stretches: [] };
    rows.set(key, entry);
    entry.stretches.push([alongRow(family, from), alongRow(family, to)]);
  }
  return [...rows].flatMap(([key, { family, row, stretches }]) => {
    stretches.sort((a, b) => a[0] - b[0]);
    const joined: [number, number][] = [];
    for (const [from, to] of stretches) {
      const last = joined.at(-1);
      if (last && from - last[1] < NEAR_MM * mm) last[1] = Math.max(last[1], to);
      else joined.push([from, to]);
    }
    return joined.flatMap(([from, to], i): HatchStroke[] => {
      if (to - from < SHORTEST_MM * mm) return [];
      const place = (along: number) => onRow(family, row, along, mm);
      return [{ id: `${key}.${i + 1}`, points: [place(from + SHORT_BY_MM * mm), place(to - SHORT_BY_MM * mm)] }];
    });
  });
}
