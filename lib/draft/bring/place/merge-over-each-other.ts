import type { PlanPoint } from "../../../stage/frame";
import { joinSets, piecesNear } from "./piece-index";
import { alongPiece, areParallel, JOIN_M, lengthOf, placeAlong, type WallPiece } from "./wall-piece";

/** Lines nearer than this are one line drawn twice, metres. */
const SAME_LINE_M = 0.005;

/** One piece for pieces drawn over each other on one line. Pieces that only meet end to end stay apart. */
export function mergeOverEachOther(pieces: readonly WallPiece[]): readonly WallPiece[] {
  const near = piecesNear(pieces);
  const together = joinSets(pieces.length);
  for (const [i, piece] of pieces.entries())
    for (const j of near(piece, SAME_LINE_M)) if (j > i && runOver(piece, pieces[j] as WallPiece)) together.join(i, j);
  return together.sets().map((members) => {
    const own = members.map((i) => pieces[i] as WallPiece);
    return own.length === 1 ? (own[0] as WallPiece) : hull(own);
  });
}

function runOver(one: WallPiece, other: WallPiece): boolean {
  const [long, short] = lengthOf(one) >= lengthOf(other) ? [one, other] : [other, one];
  const line = alongPiece(long);
  if (!areParallel(line.along, alongPiece(short).along)) return false;
  const [[ua, va], [ub, vb]] = [placeAlong(line, short.a), placeAlong(line, short.b)];
  if (Math.max(Math.abs(va), Math.abs(vb)) > SAME_LINE_M) return false;
  const shared = Math.min(line.length, Math.max(ua, ub)) - Math.max(0, Math.min(ua, ub));
  return shared > Math.min(JOIN_M, lengthOf(short) / 2);
}

function hull(pieces: readonly WallPiece[]): WallPiece {
  const longest = pieces.reduce((best, piece) => (lengthOf(piece) > lengthOf(best) ? piece : best));
  const line = alongPiece(longest);
  const ends = pieces.flatMap(({ a, b }) => [a, b]);
  const by = (at: PlanPoint) => placeAlong(line, at)[0];
  return {
    ...longest,
    a: ends.reduce((best, at) => (by(at) < by(best) ? at : best)),
    b: ends.reduce((best, at) => (by(at) > by(best) ? at : best)),
  };
}
