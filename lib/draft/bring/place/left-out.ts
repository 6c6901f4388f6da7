import { distance } from "../../../geometry/vector";
import type { PlanPoint } from "../../../stage/frame";
import type { Gap } from "./bridge-gaps";
import type { OpeningShape } from "./opening-shapes";
import type { WallPiece } from "./wall-piece";

/** What of a brought drawing did not come on to the plan: a sentence with its reason, and where, for marking the first of them. */
export type LeftOut = { readonly say: string; readonly count: number; readonly at: readonly PlanPoint[] };

/** So many places are told of each kind. */
const PLACES_TOLD = 12;

/** A leaf's ends are so near those of its bend, metres: it may be drawn as thick as it is. */
const LEAF_M = 0.1;
/** Across a wall, a jamb's line is no longer than the thickest wall, metres. */
const JAMB_LENGTH_M = 0.35;

type Found = {
  readonly short: readonly WallPiece[];
  readonly open: readonly Gap[];
  readonly shapes: readonly OpeningShape[];
  readonly refused: readonly string[];
};

/**
 * The shapes that account for no opening. Leaves stand away from their wall, and are accounted for by the bend that their edge
 * swings through; a jamb is too short to matter.
 */
export function looseShapes(shapes: readonly OpeningShape[], accounted: ReadonlySet<number>): readonly OpeningShape[] {
  const bends = shapes.filter((shape, i) => shape.kind === "bend" && accounted.has(i));
  return shapes.filter((shape, i) => {
    if (accounted.has(i)) return false;
    if (shape.kind === "bend") return true;
    const [a, b] = shape.ends;
    const isLeaf = bends.some((bend) => {
      if (bend.kind !== "bend") return false;
      const atHinge = (at: PlanPoint) => distance(at, bend.centre) < LEAF_M;
      const atEdge = (at: PlanPoint) => bend.ends.some((end) => distance(at, end) < LEAF_M);
      return (atHinge(a) && atEdge(b)) || (atHinge(b) && atEdge(a)) || (atEdge(a) && atEdge(b));
    });
    return !isLeaf && distance(a, b) > JAMB_LENGTH_M;
  });
}

export function listLeftOut({ short, open, shapes, refused }: Found): readonly LeftOut[] {
  const items: LeftOut[] = [];
  if (short.length > 0)
    items.push(
      told(
        `${some(short.length, "line is", "lines are")} too short to be a wall.`,
        short.map(({ a }) => a),
      ),
    );
  if (open.length > 0)
    items.push(
      told(
        `${some(open.length, "gap between walls in line is", "gaps between walls in line are")} left open: no layer of openings has a line there.`,
        open.map(({ from, to }) => [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2]),
      ),
    );
  const bends = shapes.filter(({ kind }) => kind === "bend");
  if (bends.length > 0)
    items.push(
      told(
        `${some(bends.length, "bend on a layer of openings is", "bends on layers of openings are")} no door: no wall has both its hinges and its shut edge.`,
        bends.map(({ ends }) => ends[0]),
      ),
    );
  const lines = shapes.filter(({ kind }) => kind === "line");
  if (lines.length > 0)
    items.push(
      told(
        `${some(lines.length, "line on a layer of openings runs", "lines on layers of openings run")} along no wall.`,
        lines.map(({ ends }) => ends[0]),
      ),
    );
  for (const say of new Set(refused)) items.push({ say, count: refused.filter((each) => each === say).length, at: [] });
  return items;
}

function told(say: string, at: readonly PlanPoint[]): LeftOut {
  return { say, count: at.length, at: at.slice(0, PLACES_TOLD) };
}

function some(count: number, one: string, several: string): string {
  return `${count.toLocaleString("en")} ${count === 1 ? one : several}`;
}
