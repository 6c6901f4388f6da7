import type { RidgePoint, Ridges } from "./ridges";

/** A stroke followed from point to point. */
export type Chain = readonly RidgePoint[];

/** A stroke goes on to a point that turns less than this, radians. */
const TURN = 0.6;
/** How far a stroke may be interrupted and still be followed, pixels of its way. */
const JUMP_PX = 4;
/** How far beside its way the next point may lie, pixels. */
const BESIDE_PX = 1.3;
/** Shorter ones are specks, millimetres. */
const SPECK_MM = 0.8;
/** Strokes shorter than this are kept if they are as strong all along as where one begins: noise is so at single points only. */
const SHORT_MM = 3.5;

/** Follows every stroke both ways from its strongest point, straight on through whatever crosses it. */
export function traceRidges(ridges: Ridges, pixelsPerMm: number): readonly Chain[] {
  const { points, begins } = ridges;
  const used = new Uint8Array(points.length + 1);
  const seeds = points.flatMap(({ strength }, i) => (strength >= begins ? [i + 1] : []));
  seeds.sort((a, b) => (points[b - 1] as RidgePoint).strength - (points[a - 1] as RidgePoint).strength);
  const chains: Chain[] = [];
  for (const seed of seeds) {
    if (used[seed]) continue;
    const first = points[seed - 1] as RidgePoint;
    used[seed] = 1;
    hideBeside(ridges, used, first);
    const ahead = follow(ridges, used, first, [-first.ny, first.nx]);
    const back = follow(ridges, used, first, [first.ny, -first.nx]);
    const chain = [...back.reverse(), first, ...ahead];
    const mean = chain.reduce((sum, { strength }) => sum + strength, 0) / chain.length;
    const least = chain.length < SHORT_MM * pixelsPerMm ? begins : 0.7 * begins;
    if (chain.length >= SPECK_MM * pixelsPerMm * 0.8 && mean >= least) chains.push(chain);
  }
  return chains;
}

function follow(ridges: Ridges, used: Uint8Array, from: RidgePoint, way: readonly [number, number]): RidgePoint[] {
  const chain: RidgePoint[] = [];
  let [here, [dx, dy]] = [from, way];
  for (;;) {
    const found = nextPoint(ridges, used, here, dx, dy);
    if (!found) return chain;
    const next = ridges.points[found - 1] as RidgePoint;
    used[found] = 1;
    hideBeside(ridges, used, next);
    chain.push(next);
    const sign = -next.ny * dx + next.nx * dy < 0 ? -1 : 1;
    // A little of the way so far steadies the walk over noise.
    const [ux, uy] = [0.6 * dx - 0.4 * sign * next.ny, 0.6 * dy + 0.4 * sign * next.nx];
    const length = Math.hypot(ux, uy);
    [here, dx, dy] = [next, ux / length, uy / length];
  }
}

function nextPoint(ridges: Ridges, used: Uint8Array, here: RidgePoint, dx: number, dy: number): number {
  const { width, height, at, points } = ridges;
  const [px, py] = [Math.floor(here.x), Math.floor(here.y)];
  let best = 0;
  let least = Number.POSITIVE_INFINITY;
  for (let y = Math.max(0, py - JUMP_PX); y <= Math.min(height - 1, py + JUMP_PX); y++)
    for (let x = Math.max(0, px - JUMP_PX); x <= Math.min(width - 1, px + JUMP_PX); x++) {
      const found = at[y * width + x] as number;
      if (found === 0 || used[found]) continue;
      const point = points[found - 1] as RidgePoint;
      const [ex, ey] = [point.x - here.x, point.y - here.y];
      const along = ex * dx + ey * dy;
      const beside = Math.abs(ex * dy - ey * dx);
      if (along < 0.4 || along > JUMP_PX || beside > Math.min(BESIDE_PX, 0.4 + 0.5 * along)) continue;
      const turn = Math.acos(Math.min(1, Math.abs(-point.ny * dx + point.nx * dy)));
      if (turn > TURN) continue;
      const cost = along + beside + 2 * turn;
      if (cost < least) [best, least] = [found, cost];
    }
  return best;
}

/** Points of the same stroke in the pixels next to its middle would be followed as a second stroke. */
function hideBeside({ width, at, points }: Ridges, used: Uint8Array, { x, y, nx, ny }: RidgePoint): void {
  for (const step of [-1, 1]) {
    const [bx, by] = [Math.floor(x + step * nx), Math.floor(y + step * ny)];
    const beside = at[by * width + bx] ?? 0;
    if (beside === 0) continue;
    const point = points[beside - 1] as RidgePoint;
    const alike = Math.abs(point.nx * nx + point.ny * ny) > 0.8;
    if (alike && Math.abs((point.x - x) * nx + (point.y - y) * ny) < BESIDE_PX) used[beside] = 1;
  }
}
