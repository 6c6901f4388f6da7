import Flatbush from "flatbush";
import { meet } from "../../../geometry/meet";
import { distanceToSegment } from "../../../geometry/segments-cross";
import { distance } from "../../../geometry/vector";
import type { BroughtPoint } from "../brought";
import { BENT, type CatchingPieces, FIRST_IS_END, LAST_IS_END } from "./lay-out-pieces";

/** What of a drawing caught a place that was pointed at. */
export type CaughtBy = "end" | "crossing" | "middle" | "line";
export type CaughtPlace = { readonly at: BroughtPoint; readonly by: CaughtBy };

/** Finds the pieces of lines whose boxes are no farther from a place than so much either way, on the layers that are shown. */
export type Catching = (at: BroughtPoint, within: number) => readonly Piece[];

type Piece = { readonly a: BroughtPoint; readonly b: BroughtPoint; readonly flags: number };

/** So many lines near the pointer are looked at; where there are more nothing could be told apart anyway. */
const MOST_NEAR = 32;
/** A crossing this little past the end of a line still lies on it, share of its length. */
const PAST_END = 1e-6;
/** The nearer comes first among these; the others only where there is none of the ones before. */
const RANKS: Readonly<Record<CaughtBy, number>> = { end: 0, crossing: 0, middle: 1, line: 2 };

/** Makes the pieces of a drawing's lines ready for being pointed at. */
export function openCatching(pieces: CatchingPieces, isShown: (layer: number) => boolean): Catching {
  const { ends, layers, flags, boxes } = pieces;
  const index = boxes ? Flatbush.from(boxes) : null;
  const piece = (i: number): Piece => ({
    a: [ends[4 * i] as number, ends[4 * i + 1] as number],
    b: [ends[4 * i + 2] as number, ends[4 * i + 3] as number],
    flags: flags[i] as number,
  });
  return ([x, y], within) =>
    (index?.search(x - within, y - within, x + within, y + within, (i) => isShown(layers[i] as number)) ?? []).map(
      piece,
    );
}

/**
 * The place of the drawing that is meant by one that was pointed at: the end of a line or a crossing of two, else a line's middle,
 * else a place on a line; null where nothing is within reach. All in the drawing's own unit.
 */
export function catchPlace(catching: Catching, at: BroughtPoint, within: number): CaughtPlace | null {
  const near = catching(at, within)
    .map((each) => ({ each, off: distanceToSegment(at, [each.a, each.b]) }))
    .filter(({ off }) => off <= within)
    .sort((one, other) => one.off - other.off)
    .slice(0, MOST_NEAR)
    .map(({ each }) => each);
  const found: CaughtPlace[] = near.flatMap((piece, i) => [
    ...ownPlaces(piece),
    { at: nearestOn(piece.a, piece.b, at), by: "line" } as const,
    ...near.slice(0, i).flatMap((other) => crossingOf(piece, other)),
  ]);
  let best: (CaughtPlace & { readonly off: number }) | null = null;
  for (const place of found) {
    const off = distance(place.at, at);
    if (off > within) continue;
    const ahead = best ? RANKS[place.by] - RANKS[best.by] : -1;
    if (!best || ahead < 0 || (ahead === 0 && off < best.off)) best = { ...place, off };
  }
  return best && { at: best.at, by: best.by };
}

/**
 * The place to jump to from another in a direction of the drawing (a unit vector): the nearest end or middle of a line that lies
 * more that way than to either side, and no farther than `reach`; null for none.
 */
export function nextPlace(catching: Catching, from: BroughtPoint, way: Way, reach: number): CaughtPlace | null {
  // Most jumps are short, and a wide search of a large drawing takes its time.
  for (let within = reach / WIDENED ** 3; within <= reach; within *= WIDENED) {
    const next = nearestThatWay(catching(from, within), from, way, within);
    if (next) return next;
  }
  return null;
}

type Way = readonly [number, number];

/** Each search for the next place is so many times as wide as the one before. */
const WIDENED = 4;
/** Places nearer to where the jump begins are the same place, as a share of the reach. */
const SAME_PLACE = 1e-9;
/** A step aside counts as so many ahead. */
const ASIDE_COUNTS = 2;

function nearestThatWay(pieces: readonly Piece[], from: BroughtPoint, way: Way, reach: number): CaughtPlace | null {
  let best: (CaughtPlace & { readonly off: number }) | null = null;
  for (const place of pieces.flatMap(ownPlaces)) {
    const out = [place.at[0] - from[0], place.at[1] - from[1]] as const;
    const ahead = out[0] * way[0] + out[1] * way[1];
    const aside = Math.abs(out[0] * way[1] - out[1] * way[0]);
    // What lies straight that way is meant before what lies a little nearer aside.
    const off = ahead + ASIDE_COUNTS * aside;
    const isThere = ahead > Math.max(aside, SAME_PLACE * reach) && Math.hypot(...out) <= reach;
    if (isThere && (!best || off < best.off)) best = { ...place, off };
  }
  return best && { at: best.at, by: best.by };
}

/** The places of one piece that are told by it alone. */
function ownPlaces({ a, b, flags }: Piece): readonly CaughtPlace[] {
  return [
    ...(flags & FIRST_IS_END ? [{ at: a, by: "end" } as const] : []),
    ...(flags & LAST_IS_END ? [{ at: b, by: "end" } as const] : []),
    ...(flags & BENT ? [] : [{ at: middleOf(a, b), by: "middle" } as const]),
  ];
}

function middleOf(a: BroughtPoint, b: BroughtPoint): BroughtPoint {
  return [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
}

function nearestOn(a: BroughtPoint, b: BroughtPoint, at: BroughtPoint): BroughtPoint {
  const share = Math.min(Math.max(shareAlong({ a, b }, at), 0), 1);
  return [a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share];
}

type Straight = Pick<Piece, "a" | "b">;

function crossingOf(one: Straight, other: Straight): readonly CaughtPlace[] {
  // Two that follow each other along one line meet, and cross nothing.
  if (one.a.every((value, i) => value === other.b[i]) || one.b.every((value, i) => value === other.a[i])) return [];
  const at = meet([one.a, one.b], [other.a, other.b]);
  return at && [one, other].every((line) => isOn(line, at)) ? [{ at, by: "crossing" }] : [];
}

function isOn(line: Straight, at: BroughtPoint): boolean {
  const share = shareAlong(line, at);
  return share >= -PAST_END && share <= 1 + PAST_END;
}

function shareAlong({ a, b }: Straight, at: BroughtPoint): number {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const square = dx * dx + dy * dy;
  return square > 0 ? ((at[0] - a[0]) * dx + (at[1] - a[1]) * dy) / square : 0;
}
