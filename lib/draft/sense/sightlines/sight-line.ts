import type { PlanPoint } from "../../../stage/frame";

/**
 * Sight lines in the plan, each named by where it crosses the plaster line, metres from the centre line. It is the first
 * coordinate of the picture that the seat sees: X = sx + (x - sx) D / (D + y) for a seat D before the plaster line.
 */
export type Eye = { readonly x: number; readonly distance: number };

/** Places nearer than this to the seat's own line across the plan are beside it, metres. */
const BESIDE_EYE_M = 1e-3;

/** Where the sight line through a place crosses the plaster line. */
export function crossingOf({ x, distance }: Eye, place: PlanPoint): number {
  return x + ((place[0] - x) * distance) / (distance + place[1]);
}

/** The place of a sight line at a distance upstage of the plaster line. */
export function placeAt(eye: Eye, crossing: number, y: number): PlanPoint {
  return [crossing + ((crossing - eye.x) * y) / eye.distance, y];
}

/** How far upstage a sight line meets the line through two places; null when it runs along it or beside it. */
export function depthOn(eye: Eye, crossing: number, a: PlanPoint, b: PlanPoint): number | null {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const slope = (crossing - eye.x) / eye.distance;
  const turn = dx - slope * dy;
  if (Math.abs(turn) < PARALLEL * (Math.abs(dx) + Math.abs(dy))) return null;
  return a[1] + ((crossing + slope * a[1] - a[0]) / turn) * dy;
}

const PARALLEL = 1e-12;

/** What of a segment lies before the seat; null where nothing does. */
export function beforeEye({ distance }: Eye, a: PlanPoint, b: PlanPoint): readonly [PlanPoint, PlanPoint] | null {
  const least = -distance + BESIDE_EYE_M;
  if (a[1] <= least && b[1] <= least) return null;
  const cut = (from: PlanPoint, to: PlanPoint): PlanPoint => {
    if (from[1] > least) return from;
    const t = (least - from[1]) / (to[1] - from[1]);
    return [from[0] + (to[0] - from[0]) * t, least];
  };
  return [cut(a, b), cut(b, a)];
}

/** Sight lines nearer to one another than this at the plaster line are one, metres. */
export const SAME_CROSSING_M = 1e-9;

/** Where two sight lines meet the line through two places. */
export function bothOn(
  eye: Eye,
  a: number,
  b: number,
  [from, to]: readonly [PlanPoint, PlanPoint],
): readonly [PlanPoint, PlanPoint] {
  const on = (crossing: number) => placeAt(eye, crossing, depthOn(eye, crossing, from, to) ?? nearer(from, to));
  return [on(a), on(b)];
}

/** Of a line that is looked along, the end met first. */
function nearer(a: PlanPoint, b: PlanPoint): number {
  return Math.min(a[1], b[1]);
}
