import type { FoundOpening, WallBand } from "./found-opening";
import type { OpeningShape } from "./opening-shapes";
import { areParallel, placeAlong } from "./wall-piece";

/** Niches are so wide and so deep, metres. */
const NARROWEST_M = 0.25;
const WIDEST_M = 6;
const SHALLOWEST_M = 0.02;
const DEEPEST_M = 1.5;
/** Ends drawn for one place agree to this, metres. */
const SAME_PLACE_M = 0.03;

type Box = { readonly start: number; readonly end: number; readonly v: number; readonly shape: number };

/**
 * Niches on a wall: a line along it, away from its face on the offstage side, with a line from each of its ends to the face. One with
 * another line between is a window with its jambs, and one at the wall's other face goes through it.
 */
export function findNiches(wall: WallBand, shapes: readonly OpeningShape[]): readonly FoundOpening[] {
  const placed = shapes.map(({ kind, ends }) => (kind === "line" ? ends.map((end) => placeAlong(wall, end)) : null));
  const backs = placed.flatMap((ends, shape): Box[] => {
    const [a, b] = ends ?? [];
    if (!a || !b || !areParallel([1, 0], direction(a, b))) return [];
    const [start, end] = [Math.min(a[0], b[0]), Math.max(a[0], b[0])];
    const v = (a[1] + b[1]) / 2;
    const fits =
      end - start >= NARROWEST_M &&
      end - start <= WIDEST_M &&
      start > -SAME_PLACE_M &&
      end < wall.length + SAME_PLACE_M;
    // With no thickness to tell it, either side may be offstage.
    const offstage = wall.toLeft > 0 ? v > 0 : wall.toRight > 0 ? v < 0 : true;
    const deep = Math.abs(v) >= SHALLOWEST_M && Math.abs(v) <= DEEPEST_M;
    return fits && offstage && deep ? [{ start, end, v, shape }] : [];
  });
  return backs.flatMap(({ start, end, v, shape }): FoundOpening[] => {
    const [one, other] = [start, end].map((u) => sideAt(placed, u, v));
    if (one === undefined || other === undefined || one < 0 || other < 0) return [];
    const glazed = backs.some((line) => near(line.start, start) && near(line.end, end) && isBetween(line.v, v));
    const through = near(Math.abs(v), Math.max(wall.toLeft, wall.toRight));
    if (glazed || through) return [];
    const depth = Math.abs(v);
    return [{ start, end, kind: "niche", depth, leaves: 1, hinge: null, left: v > 0, shapes: [shape, one, other] }];
  });
}

/** Which shape runs from the wall's face at `u` to the niche's back, or -1. */
function sideAt(placed: readonly (readonly (readonly [number, number])[] | null)[], u: number, v: number): number {
  return placed.findIndex((ends) => {
    const [a, b] = ends ?? [];
    if (!a || !b) return false;
    const [low, high] = Math.abs(a[1]) < Math.abs(b[1]) ? [a, b] : [b, a];
    return near(low[0], u) && near(high[0], u) && near(low[1], 0) && near(high[1], v);
  });
}

/** Whether a line lies between a wall's face and a niche's back, as a window's glass does. */
function isBetween(line: number, back: number): boolean {
  return line / back > 0.1 && line / back < 0.9;
}

function near(a: number, b: number): boolean {
  return Math.abs(a - b) < SAME_PLACE_M;
}

function direction(a: readonly [number, number], b: readonly [number, number]): readonly [number, number] {
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]) || 1;
  return [(b[0] - a[0]) / length, (b[1] - a[1]) / length];
}
