import type { PlaneBox } from "../clear-lettering";
import type { DrawingPoint } from "../display-list";

/** What of a line through points lies in a box: none, one or several pieces (Liang and Barsky 1984, from memory, a stretch at a time). */
export function clipLine(points: readonly DrawingPoint[], box: PlaneBox): readonly (readonly DrawingPoint[])[] {
  const pieces: DrawingPoint[][] = [];
  let whole = false;
  for (let i = 1; i < points.length; i++) {
    const [a, b] = [points[i - 1], points[i]] as [DrawingPoint, DrawingPoint];
    const share = insideShare(a, b, box);
    if (!share) {
      whole = false;
      continue;
    }
    const [from, to] = [along(a, b, share[0]), along(a, b, share[1])];
    if (whole && share[0] === 0) pieces.at(-1)?.push(to);
    else pieces.push([from, to]);
    whole = share[1] === 1;
  }
  return pieces;
}

/** What of a filled outline lies in a box (Sutherland and Hodgman 1974, from memory). Empty when nothing does. */
export function clipArea(outline: readonly DrawingPoint[], box: PlaneBox): readonly DrawingPoint[] {
  const [left, bottom, right, top] = box;
  const sides: readonly ((p: DrawingPoint) => number)[] = [
    ([x]) => x - left,
    ([x]) => right - x,
    ([, y]) => y - bottom,
    ([, y]) => top - y,
  ];
  return sides.reduce<readonly DrawingPoint[]>((points, depth) => cutSide(points, depth), outline);
}

function cutSide(points: readonly DrawingPoint[], depth: (p: DrawingPoint) => number): readonly DrawingPoint[] {
  return points.flatMap((here, i) => {
    const before = points[(i + points.length - 1) % points.length] as DrawingPoint;
    const [d, e] = [depth(before), depth(here)];
    const crossing = d < 0 !== e < 0 ? [along(before, here, d / (d - e))] : [];
    return e < 0 ? crossing : [...crossing, here];
  });
}

/** From and to which share of a stretch it lies in the box; null when it does nowhere. */
function insideShare([ax, ay]: DrawingPoint, [bx, by]: DrawingPoint, box: PlaneBox): readonly [number, number] | null {
  let [from, to] = [0, 1];
  const [left, bottom, right, top] = box;
  for (const [start, step, low, high] of [
    [ax, bx - ax, left, right],
    [ay, by - ay, bottom, top],
  ] as const) {
    if (step === 0) {
      if (start < low || start > high) return null;
      continue;
    }
    const [one, other] = [(low - start) / step, (high - start) / step];
    from = Math.max(from, Math.min(one, other));
    to = Math.min(to, Math.max(one, other));
  }
  return from < to ? [from, to] : null;
}

function along(a: DrawingPoint, b: DrawingPoint, t: number): DrawingPoint {
  if (t === 0) return a;
  if (t === 1) return b;
  return [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t];
}
