import type { Wall } from "../../plan/plan";
import { isCut } from "./draw-opening";

/** Pieces of wall shorter than this between openings are not drawn, metres. */
const SHORTEST_PIECE_M = 1e-6;

export type Piece = readonly [start: number, end: number];

/** What is left of a wall between the openings that are cut through, along it from its `from` corner. */
export function solidPieces(wall: Wall, length: number): readonly Piece[] {
  const gaps = wall.openings
    .filter(isCut)
    .map(({ at, width }): Piece => [Math.max(0, at), Math.min(length, at + width)])
    .sort((a, b) => a[0] - b[0]);
  const pieces: Piece[] = [];
  let reached = 0;
  for (const [start, end] of gaps) {
    if (start - reached > SHORTEST_PIECE_M) pieces.push([reached, start]);
    reached = Math.max(reached, end);
  }
  if (length - reached > SHORTEST_PIECE_M) pieces.push([reached, length]);
  return pieces;
}
