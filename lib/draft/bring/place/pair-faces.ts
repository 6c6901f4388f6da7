import type { PlanPoint } from "../../../stage/frame";
import { joinSets, piecesNear } from "./piece-index";
import { type Along, alongPiece, areParallel, lengthOf, placeAlong, type WallPiece } from "./wall-piece";

/** Two faces of one wall are so far apart, metres: from a thin flat to a foot of masonry (common practice, no source). */
const THINNEST_M = 0.015;
const THICKEST_M = 0.31;
/** Faces of one wall keep their distance to this, metres. */
const SAME_THICKNESS_M = 0.004;
/** Of the shorter face so much runs beside the other. */
const BESIDE_SHARE = 0.5;
/** A face is longer than the wall is thick, by so much. */
const LONGER = 1.1;
/** Of a face so much has the other face behind it, or the two lines are no plain wall. */
const BACKED_SHARE = 0.6;

/** Two faces of one wall: pieces on one line, and pieces on the line across from it. */
export type FacePair = {
  readonly near: readonly number[];
  readonly far: readonly number[];
  readonly thickness: number;
  /** Unit direction from the near face to the far one. */
  readonly across: PlanPoint;
};

type Beside = { readonly other: number; readonly away: number; readonly overlap: number };

/**
 * Pairs of faces among pieces, where it is plain: each face has a face on one side only, all at one distance. Pieces that are too
 * short to tell, as between a corner and a jamb, go with a plain pair that they are in line with.
 */
export function pairFaces(pieces: readonly WallPiece[]): readonly FacePair[] {
  const plain = plainPairs(pieces);
  return [...plain, ...shortPairs(pieces, plain)];
}

function plainPairs(pieces: readonly WallPiece[]): readonly FacePair[] {
  const near = piecesNear(pieces);
  const lines = pieces.map(alongPiece);
  const beside = pieces.map((piece, i) =>
    near(piece, THICKEST_M).flatMap((j) => besideOf(lines, pieces, i, j, LONGER)),
  );
  const plain = beside.map(plainFace);
  const together = joinSets(pieces.length);
  for (const [i, face] of plain.entries())
    for (const { other } of face ?? []) if (plain[other]?.some((back) => back.other === i)) together.join(i, other);
  return together.sets().flatMap((members): FacePair[] => {
    if (members.length < 2) return [];
    const first = members[0] as number;
    const line = lines[first] as Along;
    const away = ((plain[first] as Beside[])[0] as Beside).away;
    const onNear = members.filter(
      (i) => Math.abs(placeAlong(line, (pieces[i] as WallPiece).a)[1]) < Math.abs(away) / 2,
    );
    const onFar = members.filter((i) => !onNear.includes(i));
    const backed = sum(onNear.flatMap((i) => (plain[i] ?? []).map(({ overlap }) => overlap)));
    const shorter = Math.min(
      sum(onNear.map((i) => lengthOf(pieces[i] as WallPiece))),
      sum(onFar.map((i) => lengthOf(pieces[i] as WallPiece))),
    );
    if (!(backed >= BACKED_SHARE * shorter)) return [];
    const side = Math.sign(away);
    const across: PlanPoint = [-line.along[1] * side, line.along[0] * side];
    return [{ near: onNear, far: onFar, thickness: Math.abs(away), across }];
  });
}

function shortPairs(pieces: readonly WallPiece[], plain: readonly FacePair[]): readonly FacePair[] {
  const near = piecesNear(pieces);
  const lines = pieces.map(alongPiece);
  const paired = new Set(plain.flatMap((pair) => [...pair.near, ...pair.far]));
  const found: FacePair[] = [];
  for (const [i, piece] of pieces.entries()) {
    if (paired.has(i)) continue;
    for (const j of near(piece, THICKEST_M)) {
      if (j <= i || paired.has(j)) continue;
      const line = lines[i] as Along;
      const beside = besideOf(lines, pieces, i, j, 0)[0];
      const model = beside && plain.find((pair) => goesWith(pair, pieces, i, j) || goesWith(pair, pieces, j, i));
      if (!beside || !model) continue;
      const side = Math.sign(beside.away);
      const across: PlanPoint = [-line.along[1] * side, line.along[0] * side];
      found.push({ near: [i], far: [j], thickness: Math.abs(beside.away), across });
      paired.add(i).add(j);
      break;
    }
  }
  return found;
}

/** Whether two pieces lie on the lines of a pair's two faces. */
function goesWith({ near, far }: FacePair, pieces: readonly WallPiece[], i: number, j: number): boolean {
  const onLine = (of: readonly number[], index: number) => {
    const { a, b } = pieces[index] as WallPiece;
    const line = alongPiece(pieces[of[0] as number] as WallPiece);
    return [a, b].every((at) => Math.abs(placeAlong(line, at)[1]) <= SAME_THICKNESS_M);
  };
  return onLine(near, i) && onLine(far, j);
}

function besideOf(
  lines: readonly Along[],
  pieces: readonly WallPiece[],
  i: number,
  j: number,
  longer: number,
): readonly Beside[] {
  if (i === j) return [];
  const [line, other] = [lines[i] as Along, pieces[j] as WallPiece];
  if (!areParallel(line.along, (lines[j] as Along).along)) return [];
  const [[ua, va], [ub, vb]] = [placeAlong(line, other.a), placeAlong(line, other.b)];
  const away = (va + vb) / 2;
  if (Math.abs(va - vb) > SAME_THICKNESS_M || Math.abs(away) < THINNEST_M || Math.abs(away) > THICKEST_M) return [];
  const overlap = Math.min(line.length, Math.max(ua, ub)) - Math.max(0, Math.min(ua, ub));
  const enough = Math.max(BESIDE_SHARE * Math.min(line.length, lengthOf(other)), longer * Math.abs(away));
  return overlap >= enough ? [{ other: j, away, overlap }] : [];
}

/** The faces beside a face, when all lie on one side at one distance; else null: treads, shelves, a corridor of lines. */
function plainFace(beside: readonly Beside[]): readonly Beside[] | null {
  const first = beside[0];
  if (!first) return null;
  return beside.every(({ away }) => Math.abs(away - first.away) <= SAME_THICKNESS_M) ? beside : null;
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
