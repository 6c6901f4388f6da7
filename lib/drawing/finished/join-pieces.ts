import type { PicturePoint } from "../../stage/frame";
import { ON_LINE_M } from "../hidden-lines/touch";

/** A straight piece of the picture. Pieces of one `style` may be joined, and pieces of one `stem` round a corner. */
export type JoinPiece = {
  readonly id: string;
  readonly stem: string;
  readonly style: string;
  readonly from: PicturePoint;
  readonly to: PicturePoint;
};

export type JoinedLine = {
  readonly id: string;
  readonly style: string;
  readonly points: readonly PicturePoint[];
  readonly closed: boolean;
};

/** Ends nearer than this meet, metres on the picture plane. */
const MEET_M = 1e-5;
/** Pieces of one curve may turn by no more than this where they are joined, others go straight on, radians. */
const CURVE_TURN = (75 * Math.PI) / 180;
const STRAIGHT_TURN = (0.5 * Math.PI) / 180;
/** A piece this many times longer than its neighbour is no facet of the same curve, as a jamb that goes on into an arch. */
const ONE_CURVE = 6;

type End = { readonly piece: number; readonly last: boolean };

/**
 * Straight pieces joined to the lines a hand would draw in one stroke: what goes straight on, and the facets of a curve. A line that
 * comes back to its beginning is closed, its first point not repeated. Ids are those of the first pieces, with a number where
 * one has been used.
 */
export function joinPieces(pieces: readonly JoinPiece[]): readonly JoinedLine[] {
  const links = linkEnds(pieces);
  const done = new Set<number>();
  const used = new Map<string, number>();
  const lines: JoinedLine[] = [];
  const walk = (start: number, backward: boolean): void => {
    const points: PicturePoint[] = [];
    let [at, last] = [start, !backward];
    for (;;) {
      done.add(at);
      const piece = pieces[at] as JoinPiece;
      points.push(last ? piece.from : piece.to);
      const next = links.get(endKey({ piece: at, last }));
      if (!next || done.has(next.piece)) {
        const closed = next?.piece === start && points.length > 2;
        if (!closed) points.push(last ? piece.to : piece.from);
        const { style, id } = pieces[start] as JoinPiece;
        lines.push({ id: fresh(id), style, points: withoutStraight(points, closed), closed });
        return;
      }
      [at, last] = [next.piece, !next.last];
    }
  };
  const fresh = (id: string): string => {
    const count = (used.get(id) ?? 0) + 1;
    used.set(id, count);
    return count > 1 ? `${id}~${count}` : id;
  };
  // Open lines from an end of theirs first; what is left then are loops.
  pieces.forEach((_, i) => {
    if (done.has(i)) return;
    if (!links.has(endKey({ piece: i, last: false }))) walk(i, false);
    else if (!links.has(endKey({ piece: i, last: true }))) walk(i, true);
  });
  pieces.forEach((_, i) => {
    if (!done.has(i)) walk(i, false);
  });
  return lines;
}

/** Which end goes on into which other end, both ways. */
function linkEnds(pieces: readonly JoinPiece[]): ReadonlyMap<number, End> {
  const nodes = new Map<string, End[]>();
  pieces.forEach(({ from, to, style }, piece) => {
    for (const [point, last] of [
      [from, false],
      [to, true],
    ] as const) {
      const key = `${style} ${Math.round(point[0] / MEET_M)} ${Math.round(point[1] / MEET_M)}`;
      const node = nodes.get(key);
      if (node) node.push({ piece, last });
      else nodes.set(key, [{ piece, last }]);
    }
  });
  const links = new Map<number, End>();
  for (const ends of nodes.values()) {
    const pairs = ends.flatMap((a, i) =>
      ends.slice(i + 1).flatMap((b) => {
        if (a.piece === b.piece) return [];
        const turn = turnBetween(pieces, a, b);
        const sameCurve = areOneCurve(pieces[a.piece] as JoinPiece, pieces[b.piece] as JoinPiece);
        return turn < (sameCurve ? CURVE_TURN : STRAIGHT_TURN) ? [{ a, b, turn }] : [];
      }),
    );
    pairs.sort((p, q) => p.turn - q.turn);
    for (const { a, b } of pairs) {
      if (links.has(endKey(a)) || links.has(endKey(b))) continue;
      links.set(endKey(a), b);
      links.set(endKey(b), a);
    }
  }
  return links;
}

function areOneCurve(a: JoinPiece, b: JoinPiece): boolean {
  const [one, other] = [a, b].map(({ from, to }) => Math.hypot(to[0] - from[0], to[1] - from[1])) as [number, number];
  return a.stem === b.stem && Math.max(one, other) < ONE_CURVE * Math.min(one, other);
}

function endKey({ piece, last }: End): number {
  return 2 * piece + (last ? 1 : 0);
}

/** How much a line turns that comes along one piece to its end and leaves along the other from its end. */
function turnBetween(pieces: readonly JoinPiece[], a: End, b: End): number {
  const [ux, uz] = toward(pieces[a.piece] as JoinPiece, a.last);
  const [vx, vz] = toward(pieces[b.piece] as JoinPiece, b.last);
  return Math.abs(Math.atan2(ux * vz - uz * vx, -(ux * vx + uz * vz)));
}

function toward({ from, to }: JoinPiece, last: boolean): readonly [number, number] {
  const sign = last ? 1 : -1;
  return [(to[0] - from[0]) * sign, (to[1] - from[1]) * sign];
}

/** Leaves out points that lie on the line between their neighbours. */
function withoutStraight(points: readonly PicturePoint[], closed: boolean): readonly PicturePoint[] {
  return points.filter((point, i) => {
    const before = points[i - 1] ?? (closed ? points.at(-1) : undefined);
    const after = points[i + 1] ?? (closed ? points[0] : undefined);
    if (!before || !after) return true;
    const [ux, uz, vx, vz] = [after[0] - before[0], after[1] - before[1], point[0] - before[0], point[1] - before[1]];
    return Math.abs(ux * vz - uz * vx) > ON_LINE_M * Math.hypot(ux, uz);
  });
}
