import type { SheetPlace } from "../../sheet/place-drawings";
import type { PencilCorner, PencilLine } from "../drawing-reading";
import type { ExpectedDrawing } from "./expected-drawing";

/** Shorter lines are letters' and crosses', and explain themselves, millimetres. */
const LEAST_MM = 5;
/** A line is explained by one that should be there if it runs no farther beside it, millimetres, */
const BESIDE_MM = 1;
/** and turns less than this from it, radians, and a hand's unsteadiness of this many millimetres more. */
const TURN = 0.1;
const UNSTEADY_MM = 0.9;
/** A line may run past its end: where it meets others, and where it ends alone, millimetres. */
const OVER_MM = 1.2;
const OVER_ALONE_MM = 0.4;
/** What a millimetre of a line costs that nothing explains, and so many of them at most: it may be hatching. */
const PER_MM = 0.35;
const MOST_MM = 9;

/** What the pencil lines cost that no line between the places taken explains: the more of the drawing is left over, the less it is this one. */
export type Unexplained = (taken: readonly (number | null)[]) => number;

export function unexplainedCost(
  expected: ExpectedDrawing,
  lines: readonly PencilLine[],
  corners: readonly PencilCorner[],
): Unexplained {
  const { asked, given } = expected;
  const long = lines.filter(({ from, to }) => apart(from, to) >= LEAST_MM);
  const meeting = [...asked, ...given].map(
    (_, i) => expected.lines.filter(({ from, to }) => from === i || to === i).length,
  );
  const over = (point: number) => (point >= asked.length || (meeting[point] as number) > 1 ? OVER_MM : OVER_ALONE_MM);
  // One line is held against the same two places again and again.
  const known = new Map<number, readonly (readonly [number, number, number])[]>();
  return (taken) => {
    const placeOf = (point: number) => {
      const corner = taken[point];
      return point >= asked.length ? given[point - asked.length] : corner == null ? undefined : corners[corner]?.at;
    };
    const spans: [number, number][][] = long.map(() => []);
    expected.lines.forEach(({ from, to }, k) => {
      const [a, b] = [placeOf(from), placeOf(to)];
      if (!a || !b) return;
      const side = corners.length + 1;
      const key = (k * side + (taken[from] ?? corners.length)) * side + (taken[to] ?? corners.length);
      let found = known.get(key);
      if (!found) {
        found = long.flatMap((line, i) => {
          const span = explained(line, a, b, over(from), over(to));
          return span ? [[i, ...span] as const] : [];
        });
        known.set(key, found);
      }
      for (const [i, s, t] of found) spans[i]?.push([s, t]);
    });
    return long.reduce((sum, { from, to }, i) => {
      const length = apart(from, to);
      const left = length - unionOf(spans[i] as [number, number][]);
      return sum + PER_MM * Math.min(MOST_MM, left);
    }, 0);
  };
}

/** The part of a pencil line, millimetres from its first end, that a line from `a` to `b` explains. */
function explained(
  { from, to }: PencilLine,
  a: SheetPlace,
  b: SheetPlace,
  overA: number,
  overB: number,
): readonly [number, number] | null {
  const length = apart(from, to);
  const [ux, uy] = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
  const along = ([x, y]: SheetPlace) => (x - from[0]) * ux + (y - from[1]) * uy;
  const off = ([x, y]: SheetPlace) => (y - from[1]) * ux - (x - from[0]) * uy;
  const ends = [
    { s: along(a), p: off(a), over: overA },
    { s: along(b), p: off(b), over: overB },
  ].sort((one, other) => one.s - other.s);
  const [near, far] = ends as [(typeof ends)[0], (typeof ends)[0]];
  const span = far.s - near.s;
  const [first, last] = [Math.max(0, near.s - near.over), Math.min(length, far.s + far.over)];
  if (span < 0.5 || last <= first) return null;
  const slope = (far.p - near.p) / span;
  if (Math.abs(slope) > TURN + UNSTEADY_MM / Math.min(length, span)) return null;
  const beside = (s: number) => Math.abs(near.p + slope * (s - near.s));
  return Math.max(beside(first), beside(last)) <= BESIDE_MM ? [first, last] : null;
}

function unionOf(spans: [number, number][]): number {
  spans.sort((a, b) => a[0] - b[0]);
  let [sum, reached] = [0, 0];
  for (const [from, to] of spans) {
    sum += Math.max(0, to - Math.max(from, reached));
    reached = Math.max(reached, to);
  }
  return sum;
}

function apart(a: SheetPlace, b: SheetPlace): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1]);
}
