import { meet } from "@/lib/geometry/meet";
import { type Bounds, type Plane, type PointOn, type PxPoint, toPx, type View } from "./view";

type Pair = readonly [number, number];

/** A point that the straightedge can be laid to, and what it is called. */
export type CatchPoint = { readonly at: Pair; readonly name: string };

/** A line on the sheet, for crossings; one that is `endless` runs past its two points. */
export type CatchLine = { readonly from: Pair; readonly to: Pair; readonly name: string; readonly endless: boolean };

/** A pointer this near a point is laid to it, pixels. */
export const CATCH_PX = { mouse: 11, pen: 13, touch: 20 } as const;

/** A crossing this little past the end of a line still lies on it, share of its length. */
const PAST_END = 1e-6;
/** Points nearer than this are one, metres. */
const SAME_M = 1e-9;

/** The point under a pointer, or null where there is nothing to catch: a free end. */
export function catchPoint<P extends Plane>(
  px: PxPoint,
  view: View<P>,
  points: readonly CatchPoint[],
  reachPx: number,
): CatchPoint | null {
  let best: { readonly point: CatchPoint; readonly far: number } | null = null;
  for (const point of points) {
    const [x, y] = toPx(view, point.at as PointOn<P>);
    const far = Math.hypot(px[0] - x, px[1] - y);
    if (far <= reachPx && (!best || far < best.far)) best = { point, far };
  }
  return best?.point ?? null;
}

/** Where drawn lines cross construction lines, and construction lines each other, within the bounds. */
export function crossings(drawn: readonly CatchLine[], blue: readonly CatchLine[], bounds: Bounds): CatchPoint[] {
  const found: CatchPoint[] = [];
  blue.forEach((line, i) => {
    for (const other of [...drawn, ...blue.slice(0, i)]) {
      const at = crossing(line, other);
      if (at && inside(at, bounds) && !found.some((each) => near(each.at, at)))
        found.push({ at, name: `the crossing of ${other.name} and ${line.name}` });
    }
  });
  return found;
}

/** A line run on to the edges of a rectangle; null for one that misses it or has no direction. */
export function runOn(from: Pair, to: Pair, { left, right, bottom, top }: Bounds): readonly [Pair, Pair] | null {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  let [first, last] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (const [start, slope, least, most] of [
    [from[0], dx, left, right],
    [from[1], dy, bottom, top],
  ] as const) {
    if (slope === 0) {
      if (start < least || start > most) return null;
      continue;
    }
    const [a, b] = [(least - start) / slope, (most - start) / slope];
    first = Math.max(first, Math.min(a, b));
    last = Math.min(last, Math.max(a, b));
  }
  if (!(first < last) || !Number.isFinite(first) || !Number.isFinite(last)) return null;
  return [
    [from[0] + dx * first, from[1] + dy * first],
    [from[0] + dx * last, from[1] + dy * last],
  ];
}

function crossing(a: CatchLine, b: CatchLine): Pair | null {
  const at = meet([a.from, a.to], [b.from, b.to]);
  return at && within(a, at) && within(b, at) ? at : null;
}

function within({ from, to, endless }: CatchLine, at: Pair): boolean {
  if (endless) return true;
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const share = ((at[0] - from[0]) * dx + (at[1] - from[1]) * dy) / (dx * dx + dy * dy);
  return share >= -PAST_END && share <= 1 + PAST_END;
}

function inside([x, y]: Pair, { left, right, bottom, top }: Bounds): boolean {
  return x >= left && x <= right && y >= bottom && y <= top;
}

function near(a: Pair, b: Pair): boolean {
  return Math.hypot(a[0] - b[0], a[1] - b[1]) < SAME_M;
}
