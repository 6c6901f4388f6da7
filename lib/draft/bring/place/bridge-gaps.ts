import { cross } from "../../../geometry/vector";
import type { PlanPoint } from "../../../stage/frame";
import { findOpenings } from "./find-openings";
import type { WallBand } from "./found-opening";
import type { OpeningShape } from "./opening-shapes";
import { joinSets, piecesNear } from "./piece-index";
import { alongPiece, areParallel, JOIN_M, placeAlong, type WallPiece } from "./wall-piece";

/** A gap this wide between two walls in line may be an opening, metres. */
const WIDEST_GAP_M = 6;
/** Two walls are in line when the ends of one are this near the other's line, metres. */
const IN_LINE_M = 0.006;
/** What is drawn in a gap may fall short of its ends, or reach past them, by so much, metres. */
const GAP_SLACK_M = 0.16;

/** A place where a wall was drawn open, between the jambs. */
export type Gap = { readonly from: PlanPoint; readonly to: PlanPoint };

export type Bridged = {
  readonly pieces: readonly WallPiece[];
  /** Gaps with something of a layer of openings in them: the wall goes on through them. */
  readonly openings: readonly Gap[];
  /** Gaps with nothing in them: left open. */
  readonly open: readonly Gap[];
};

/** Walls in line become one where the gap between them holds an opening's lines. */
export function bridgeGaps(pieces: readonly WallPiece[], shapes: readonly OpeningShape[]): Bridged {
  const near = piecesNear(pieces);
  const together = joinSets(pieces.length);
  const ends = pieces.flatMap(({ a, b }) => [a, b]);
  const isFree = (at: PlanPoint) => ends.filter((end) => end[0] === at[0] && end[1] === at[1]).length === 1;
  const openings: Gap[] = [];
  const open: Gap[] = [];
  for (const [i, piece] of pieces.entries()) {
    const next = nextInLine(
      piece,
      pieces,
      near(piece, WIDEST_GAP_M).filter((j) => j !== i),
    );
    if (!next) continue;
    const gap = { from: piece.b, to: next.start };
    if (!isFilled(piece, gap, shapes)) {
      // Where walls go on round a corner from it, as about a chimney breast, it is no gap.
      if (isFree(gap.from) && isFree(gap.to)) open.push(gap);
    } else {
      openings.push(gap);
      together.join(i, next.index);
    }
  }
  const bridged = together.sets().map((members) => spanAll(members.map((i) => pieces[i] as WallPiece)));
  return { pieces: bridged, openings, open };
}

type Next = { readonly index: number; readonly start: PlanPoint };

/** The wall that goes on beyond the far end of a piece, and which of its ends faces it. */
function nextInLine(piece: WallPiece, pieces: readonly WallPiece[], others: readonly number[]): Next | null {
  const line = alongPiece(piece);
  let best: (Next & { gap: number }) | null = null;
  for (const index of others) {
    const other = pieces[index] as WallPiece;
    if (Math.abs(other.thickness - piece.thickness) > IN_LINE_M || !areParallel(line.along, alongPiece(other).along))
      continue;
    const [[ua, va], [ub, vb]] = [placeAlong(line, other.a), placeAlong(line, other.b)];
    if (Math.max(Math.abs(va), Math.abs(vb)) > IN_LINE_M) continue;
    const gap = Math.min(ua, ub) - line.length;
    if (gap > JOIN_M && gap <= WIDEST_GAP_M && (!best || gap < best.gap))
      best = { index, start: ua < ub ? other.a : other.b, gap };
  }
  return best;
}

function isFilled(piece: WallPiece, gap: Gap, shapes: readonly OpeningShape[]): boolean {
  const line = bandOf({ ...piece, a: gap.from, b: gap.to });
  return findOpenings(line, shapes).some(({ start, end }) => start < GAP_SLACK_M && end > line.length - GAP_SLACK_M);
}

/** A wall's line with its body on the side where it is thick. */
export function bandOf(piece: WallPiece): WallBand {
  const line = alongPiece(piece);
  const onLeft = piece.offstage !== null && cross(line.along, piece.offstage) > 0;
  return { ...line, toLeft: onLeft ? piece.thickness : 0, toRight: onLeft ? 0 : piece.thickness };
}

/** One piece from the first end to the last of pieces in line. */
function spanAll(pieces: readonly WallPiece[]): WallPiece {
  const [first] = pieces as [WallPiece];
  if (pieces.length === 1) return first;
  const line = alongPiece(first);
  const ends = pieces.flatMap(({ a, b }) => [a, b]).toSorted((p, q) => placeAlong(line, p)[0] - placeAlong(line, q)[0]);
  return { ...first, a: ends[0] as PlanPoint, b: ends.at(-1) as PlanPoint };
}
