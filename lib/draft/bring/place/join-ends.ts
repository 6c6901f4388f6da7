import { meet } from "../../../geometry/meet";
import { distance } from "../../../geometry/vector";
import type { PlanPoint } from "../../../stage/frame";
import { joinSets, piecesNear } from "./piece-index";
import { alongPiece, areParallel, JOIN_M, type WallPiece } from "./wall-piece";

type End = { readonly piece: number; readonly at: PlanPoint };

/** The same pieces with ends that nearly meet drawn together to one place; what shrinks to nothing is left out. */
export function joinEnds(pieces: readonly WallPiece[]): readonly WallPiece[] {
  const ends: readonly End[] = pieces.flatMap(({ a, b }, piece) => [
    { piece, at: a },
    { piece, at: b },
  ]);
  const near = piecesNear(ends.map(({ at }) => ({ a: at, b: at })));
  const together = joinSets(ends.length);
  for (const [i, { at }] of ends.entries())
    for (const j of near({ a: at, b: at }, JOIN_M))
      if (j > i && distance(at, (ends[j] as End).at) <= JOIN_M) together.join(i, j);
  const places: PlanPoint[] = [];
  for (const members of together.sets()) {
    const place = meetingPlace(
      members.map((i) => ends[i] as End),
      pieces,
    );
    for (const i of members) places[i] = place;
  }
  return pieces.flatMap((piece, i): WallPiece[] => {
    const [a, b] = [places[2 * i] as PlanPoint, places[2 * i + 1] as PlanPoint];
    return distance(a, b) > JOIN_M ? [{ ...piece, a, b }] : [];
  });
}

/** Where ends meet: their own place if they agree, where two lines cross if that is near, else midway among them. */
function meetingPlace(ends: readonly End[], pieces: readonly WallPiece[]): PlanPoint {
  const first = (ends[0] as End).at;
  if (ends.every(({ at }) => distance(at, first) === 0)) return first;
  const [one, other] = ends.map(({ piece }) => pieces[piece] as WallPiece);
  if (ends.length === 2 && one && other && !areParallel(alongPiece(one).along, alongPiece(other).along)) {
    const crossing = meet([one.a, one.b], [other.a, other.b]);
    if (crossing && distance(crossing, first) <= 4 * JOIN_M) return crossing;
  }
  const sum = ends.reduce(([x, y], { at }) => [x + at[0], y + at[1]] as const, [0, 0] as readonly [number, number]);
  return [sum[0] / ends.length, sum[1] / ends.length];
}
