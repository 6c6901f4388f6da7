import type { Chain } from "./trace-ridges";

/** A straight stretch of a stroke, pixels of the page. */
export type Straight = {
  readonly from: readonly [x: number, y: number];
  readonly to: readonly [x: number, y: number];
  /** Ends of the pieces that it was joined from, its own among them. */
  readonly knots: readonly (readonly [x: number, y: number])[];
  /** How many points it was fitted to. */
  readonly weight: number;
  /** Mean square of their distance from it. */
  readonly off2: number;
};

/** A stroke of the hand strays this far from straight, millimetres, and this share of its length. */
const STRAYS_MM = 0.25;
const STRAYS_SHARE = 0.004;
/** Shorter ones say no direction, millimetres. */
const SHORTEST_MM = 0.8;

/** Cuts a followed stroke where it turns, and fits a straight line to each piece (total least squares). */
export function fitStraight(chain: Chain, pixelsPerMm: number): readonly Straight[] {
  return pieces(chain, 0, chain.length - 1, pixelsPerMm).flatMap(([a, b]) => {
    const fitted = fitLine(chain, a, b);
    const length = Math.hypot(fitted.to[0] - fitted.from[0], fitted.to[1] - fitted.from[1]);
    return length >= SHORTEST_MM * pixelsPerMm ? [fitted] : [];
  });
}

function pieces(chain: Chain, a: number, b: number, pixelsPerMm: number): [number, number][] {
  const [p, q] = [chain[a], chain[b]];
  if (!p || !q || b - a < 3) return [[a, b]];
  const [dx, dy] = [q.x - p.x, q.y - p.y];
  const length = Math.hypot(dx, dy);
  let [farthest, at] = [0, -1];
  for (let i = a + 1; i < b; i++) {
    const point = chain[i] as { x: number; y: number };
    const off =
      length < 1
        ? Math.hypot(point.x - p.x, point.y - p.y)
        : Math.abs((point.x - p.x) * dy - (point.y - p.y) * dx) / length;
    if (off > farthest) [farthest, at] = [off, i];
  }
  if (farthest <= STRAYS_MM * pixelsPerMm + STRAYS_SHARE * length) return [[a, b]];
  return [...pieces(chain, a, at, pixelsPerMm), ...pieces(chain, at, b, pixelsPerMm)];
}

function fitLine(chain: Chain, a: number, b: number): Straight {
  let [n, mx, my] = [0, 0, 0];
  for (let i = a; i <= b; i++) {
    const { x, y } = chain[i] as { x: number; y: number };
    [n, mx, my] = [n + 1, mx + x, my + y];
  }
  [mx, my] = [mx / n, my / n];
  let [xx, xy, yy] = [0, 0, 0];
  for (let i = a; i <= b; i++) {
    const point = chain[i] as { x: number; y: number };
    const [x, y] = [point.x - mx, point.y - my];
    [xx, xy, yy] = [xx + x * x, xy + x * y, yy + y * y];
  }
  const angle = Math.atan2(2 * xy, xx - yy) / 2;
  const [ux, uy] = [Math.cos(angle), Math.sin(angle)];
  const along = (i: number) => {
    const point = chain[i] as { x: number; y: number };
    return (point.x - mx) * ux + (point.y - my) * uy;
  };
  const [s, t] = [along(a), along(b)];
  const off2 = Math.max(0, (xx * uy * uy - 2 * xy * ux * uy + yy * ux * ux) / n);
  const [from, to] = [[mx + s * ux, my + s * uy] as const, [mx + t * ux, my + t * uy] as const];
  return { from, to, knots: [from, to], weight: n, off2 };
}
