import Flatbush from "flatbush";
import { type Interval, without } from "../../geometry/intervals";
import { between, cross, distance, subtract, type Vector2 } from "../../geometry/vector";
import { SPECK_M } from "./touch";
import type { VisibleLine } from "./visible-lines";

/**
 * Pieces no farther apart than this along their common length are one line in the picture, metres on the picture plane: half a
 * millimetre, a hundredth of one on paper at half an inch to the foot, well within a pencil's width at any scale.
 */
export const SAME_LINE_M = 5e-4;

/**
 * The pieces, without what of them runs over another piece: each line of the picture comes out once, though two bodies share
 * the edge, or one edge stands exactly behind another's. Of two, that of the lower `rank` stays, then the longer, then the
 * first. Pieces come back in their order, a piece cut in two as two.
 */
export function drawOnce(
  pieces: readonly VisibleLine[],
  rank: (piece: VisibleLine) => number = () => 0,
): readonly VisibleLine[] {
  if (pieces.length === 0) return [];
  const lengths = pieces.map(({ from, to }) => distance(from, to));
  const ranks = pieces.map(rank);
  const order = pieces
    .map((_, i) => i)
    .sort((a, b) => at(ranks, a) - at(ranks, b) || at(lengths, b) - at(lengths, a) || a - b);
  const find = pieceTree(pieces);
  const kept = new Map<number, readonly VisibleLine[]>();
  for (const i of order) {
    const piece = pieces[i] as VisibleLine;
    // Only what is kept covers others: else each of a fan of lines, close enough to the next, would take that one away.
    const drawn = find(piece).flatMap((j) => (kept.get(j) ?? []).flatMap((other) => sharedStretch(piece, other)));
    const left = without([0, 1], drawn).filter(([a, b]) => (b - a) * at(lengths, i) > SAME_LINE_M);
    kept.set(i, drawn.length === 0 ? [piece] : left.map((stretch) => cutOut(piece, stretch)));
  }
  return pieces.flatMap((_, i) => kept.get(i) ?? []);
}

/** Finds the pieces whose box comes near a piece's, by their places in the list, in order. */
function pieceTree(pieces: readonly VisibleLine[]): (piece: VisibleLine) => readonly number[] {
  const box = ({ from, to }: VisibleLine, by: number) =>
    [
      Math.min(from[0], to[0]) - by,
      Math.min(from[1], to[1]) - by,
      Math.max(from[0], to[0]) + by,
      Math.max(from[1], to[1]) + by,
    ] as const;
  const tree = new Flatbush(pieces.length);
  for (const piece of pieces) tree.add(...box(piece, 0));
  tree.finish();
  return (piece) => tree.search(...box(piece, SAME_LINE_M)).sort((a, b) => a - b);
}

function at(values: readonly number[], i: number): number {
  return values[i] as number;
}

/** The stretch of a piece, 0 to 1, that runs over another; none when they only meet or cross. */
function sharedStretch({ from, to }: VisibleLine, other: VisibleLine): readonly Interval[] {
  const along = subtract(to, from);
  const square = along[0] ** 2 + along[1] ** 2;
  const across = subtract(other.to, other.from);
  const length = Math.hypot(...across);
  if (!(square > 0 && length > SPECK_M)) return [];
  const share = (p: Vector2) => ((p[0] - from[0]) * along[0] + (p[1] - from[1]) * along[1]) / square;
  const [a, b] = [share(other.from), share(other.to)].sort((p, q) => p - q) as [number, number];
  const [start, end] = [Math.max(0, a), Math.min(1, b)];
  if (!((end - start) * Math.sqrt(square) > SAME_LINE_M)) return [];
  // From the other's line, so that a short piece beside a long one is judged by the long one's direction.
  const gap = (t: number) => Math.abs(cross(across, subtract(between(from, to, t), other.from))) / length;
  return gap(start) <= SAME_LINE_M && gap(end) <= SAME_LINE_M ? [[start, end]] : [];
}

function cutOut(piece: VisibleLine, [start, end]: Interval): VisibleLine {
  const share = piece.end - piece.start;
  return {
    line: piece.line,
    from: between(piece.from, piece.to, start),
    to: between(piece.from, piece.to, end),
    start: piece.start + share * start,
    end: piece.start + share * end,
  };
}
