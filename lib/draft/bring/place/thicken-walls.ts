import type { PlanPoint } from "../../../stage/frame";
import { type FacePair, pairFaces } from "./pair-faces";
import { joinSets } from "./piece-index";
import { alongPiece, lengthOf, placeAlong, type WallPiece } from "./wall-piece";

/** A line between two faces is the end of their wall when it is no longer than this many thicknesses. */
const END_LENGTH = 1.6;

type Ends = Pick<WallPiece, "a" | "b">;

/**
 * Walls drawn as two faces become one wall each, on their onstage face; the lines that close their ends go. The onstage face is
 * the one toward the eye, decided for connected faces together, since a few of them may be seen edge on or from behind.
 */
export function thickenWalls(pieces: readonly WallPiece[], eye: PlanPoint): readonly WallPiece[] {
  const pairs = pairFaces(pieces);
  const faces = new Set(pairs.flatMap(({ near, far }) => [...near, ...far]));
  const touching = piecesAt(pieces);
  const ends = new Set(pairs.flatMap((pair) => endsOf(pair, pieces, faces, touching)));
  const run = connected(pieces, ends);

  const votes = new Map<string, number>();
  for (const pair of pairs) votes.set(runsOf(pair), (votes.get(runsOf(pair)) ?? 0) + vote(pair));
  const offstage = new Map<number, { thickness: number; offstage: PlanPoint }>();
  const gone = new Set(ends);
  for (const pair of pairs) {
    const own =
      run(pair.near[0] as number) === run(pair.far[0] as number) ? vote(pair) : (votes.get(runsOf(pair)) ?? 0);
    const nearIsOnstage = swapped(pair) ? own <= 0 : own >= 0;
    const [onstage, back] = nearIsOnstage ? [pair.near, pair.far] : [pair.far, pair.near];
    const across: PlanPoint = nearIsOnstage ? pair.across : [-pair.across[0], -pair.across[1]];
    for (const i of onstage) offstage.set(i, { thickness: pair.thickness, offstage: across });
    for (const i of back) gone.add(i);
  }
  return pieces.flatMap((piece, i) => (gone.has(i) ? [] : [{ ...piece, ...offstage.get(i) }]));

  /** The two runs of faces that a pair belongs to, the same for all pairs between them. */
  function runsOf(pair: FacePair): string {
    return [run(pair.near[0] as number), run(pair.far[0] as number)].toSorted((a, b) => a - b).join(" ");
  }

  function swapped(pair: FacePair): boolean {
    return run(pair.near[0] as number) > run(pair.far[0] as number);
  }

  /** Above 0 when the eye sees the face of the run that comes first, by as much as there is of it. */
  function vote(pair: FacePair): number {
    const faced = pieces[pair.near[0] as number] as WallPiece;
    const [, left] = placeAlong(alongPiece(faced), eye);
    const { along } = alongPiece(faced);
    const side = Math.sign(along[0] * pair.across[1] - along[1] * pair.across[0]);
    const before = -left * side;
    if (before > -pair.thickness && before < 0) return 0;
    const length = pair.near.reduce((total, i) => total + lengthOf(pieces[i] as WallPiece), 0);
    return Math.sign(before) * length * (swapped(pair) ? -1 : 1);
  }
}

/** Short lines from one face to the other. */
function endsOf(
  { near, far, thickness }: FacePair,
  pieces: readonly WallPiece[],
  faces: ReadonlySet<number>,
  touching: (at: PlanPoint) => readonly number[],
): readonly number[] {
  const others = new Set(far);
  const across = near.flatMap((i) => {
    const { a, b } = pieces[i] as WallPiece;
    return [...touching(a), ...touching(b)];
  });
  return across.filter((i) => {
    const piece = pieces[i] as WallPiece;
    if (faces.has(i) || lengthOf(piece) > END_LENGTH * thickness) return false;
    return [...touching(piece.a), ...touching(piece.b)].some((j) => others.has(j));
  });
}

/** The pieces that end at a place; places were joined before, so they are the same numbers. */
function piecesAt(pieces: readonly Ends[]): (at: PlanPoint) => readonly number[] {
  const at = new Map<string, number[]>();
  for (const [i, { a, b }] of pieces.entries())
    for (const end of [a, b]) {
      const key = end.join(" ");
      const list = at.get(key) ?? [];
      if (list.length === 0) at.set(key, list);
      list.push(i);
    }
  return (place) => at.get(place.join(" ")) ?? [];
}

/** Which run of pieces that touch each other a piece belongs to, without those left out. */
function connected(pieces: readonly WallPiece[], leftOut: ReadonlySet<number>): (i: number) => number {
  const together = joinSets(pieces.length);
  const touching = piecesAt(pieces);
  for (const [i, { a, b }] of pieces.entries()) {
    if (leftOut.has(i)) continue;
    for (const end of [a, b]) for (const j of touching(end)) if (!leftOut.has(j)) together.join(i, j);
  }
  return together.find;
}
