import type { Straight } from "./fit-straight";

/** Two pieces are one line across a gap of this, millimetres, and across print as wide as this. */
const GAP_MM = 1.3;
const GAP_OVER_PRINT_MM = 7;
/** Of a longer gap this share must be under print, or dark beside it. */
const COVERED = 0.75;
/** Pieces of one line turn less than this, radians; a short piece's own direction is less sure by this many millimetres over its length. */
const TURN = 0.05;
const UNSURE_MM = 0.25;
/** A joined line leaves no end of its pieces farther off than this, millimetres. */
const OFF_MM = 0.33;
/** A line drawn over again lies this near to the first, millimetres, along this share of the shorter one. */
const AGAIN_MM = 0.75;
const AGAIN_TURN = 0.07;
const AGAIN_SHARE = 0.55;
/** Where a stroke dives under print at a slant its visible edge looks like a short line of its own: shorter than this, and so turned. */
const SLIVER_MM = 4.5;
const SLIVER_TURN = 0.45;
const SLIVER_SHARE = 0.5;

type Where = {
  readonly pixelsPerMm: number;
  /** The share of the straight way between two places that lies under print or is dark. */
  covered(a: readonly [number, number], b: readonly [number, number]): number;
};

/** Joins pieces that lie on one line, over gaps, under print, and where a line was drawn twice; the longest first. */
export function joinStraight(pieces: readonly Straight[], where: Where): readonly Straight[] {
  let lines = [...pieces].sort((a, b) => lengthOf(b) - lengthOf(a));
  for (;;) {
    const joined = joinOnce(lines, where);
    if (joined.length === lines.length) return joined;
    lines = [...joined].sort((a, b) => lengthOf(b) - lengthOf(a));
  }
}

function joinOnce(lines: readonly Straight[], where: Where): readonly Straight[] {
  const gone = new Set<number>();
  const joined: Straight[] = [];
  for (let i = 0; i < lines.length; i++) {
    if (gone.has(i)) continue;
    let line = lines[i] as Straight;
    for (let k = i + 1; k < lines.length; k++) {
      if (gone.has(k)) continue;
      const other = lines[k] as Straight;
      const one = isSliver(line, other, where.pixelsPerMm) ? line : asOne(line, other, where);
      if (!one) continue;
      line = one;
      gone.add(k);
    }
    joined.push(line);
  }
  return joined;
}

function isSliver(line: Straight, short: Straight, pixelsPerMm: number): boolean {
  const [long, length] = [lengthOf(line), lengthOf(short)];
  if (length > SLIVER_MM * pixelsPerMm || length > SLIVER_SHARE * long) return false;
  const [ux, uy] = [(line.to[0] - line.from[0]) / long, (line.to[1] - line.from[1]) / long];
  const turn = Math.abs((short.to[0] - short.from[0]) * uy - (short.to[1] - short.from[1]) * ux) / length;
  if (turn > SLIVER_TURN) return false;
  return [short.from, short.to].every(([x, y]) => {
    const along = (x - line.from[0]) * ux + (y - line.from[1]) * uy;
    const beside = Math.abs((x - line.from[0]) * uy - (y - line.from[1]) * ux);
    return along >= 0 && along <= long && beside <= AGAIN_MM * pixelsPerMm;
  });
}

/** The two as one line, or null where they are not. */
function asOne(a: Straight, b: Straight, { pixelsPerMm, covered }: Where): Straight | null {
  const [la, lb] = [lengthOf(a), lengthOf(b)];
  const [ux, uy] = [(a.to[0] - a.from[0]) / la, (a.to[1] - a.from[1]) / la];
  const turn = Math.abs(
    Math.asin(Math.max(-1, Math.min(1, (ux * (b.to[1] - b.from[1]) - uy * (b.to[0] - b.from[0])) / lb))),
  );
  const unsure = UNSURE_MM * pixelsPerMm * (1 / la + 1 / lb);
  if (turn > Math.max(TURN, AGAIN_TURN) + unsure) return null;
  const place = ([x, y]: readonly [number, number]) => ({
    along: (x - a.from[0]) * ux + (y - a.from[1]) * uy,
    off: (x - a.from[0]) * -uy + (y - a.from[1]) * ux,
  });
  const ends = [b.from, b.to].map((end) => ({ end, ...place(end) })).sort((p, q) => p.along - q.along);
  const [near, far] = ends as [(typeof ends)[0], (typeof ends)[0]];
  const shared = Math.min(la, far.along) - Math.max(0, near.along);
  if (shared > AGAIN_SHARE * Math.min(la, lb)) {
    const beside = Math.max(Math.abs(near.off), Math.abs(far.off));
    return turn <= AGAIN_TURN + unsure && beside <= AGAIN_MM * pixelsPerMm ? fitBoth(a, b) : null;
  }
  if (turn > TURN + unsure) return null;
  const gap = -shared;
  const limit = gap <= GAP_MM * pixelsPerMm ? 0 : COVERED;
  if (gap > GAP_OVER_PRINT_MM * pixelsPerMm) return null;
  const [p, q] = near.along > la / 2 ? [a.to, near.end] : [a.from, far.end];
  if (limit > 0 && covered(p, q) < limit) return null;
  const one = fitBoth(a, b);
  const off = Math.max(...one.knots.map((end) => offOf(one, end)));
  return off <= OFF_MM * pixelsPerMm ? one : null;
}

/** Total least squares over both, from their ends, lengths and spreads. */
function fitBoth(a: Straight, b: Straight): Straight {
  const parts = [a, b].map(({ from, to, weight }) => ({
    weight,
    middle: [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2] as const,
    // Points spread evenly along a stretch scatter by a twelfth of its length squared.
    span: [(to[0] - from[0]) / Math.sqrt(12), (to[1] - from[1]) / Math.sqrt(12)] as const,
  }));
  const all = a.weight + b.weight;
  const mx = parts.reduce((sum, part) => sum + part.weight * part.middle[0], 0) / all;
  const my = parts.reduce((sum, part) => sum + part.weight * part.middle[1], 0) / all;
  let [xx, xy, yy] = [0, 0, 0];
  for (const { weight, middle, span } of parts) {
    const [x, y] = [middle[0] - mx, middle[1] - my];
    xx += weight * (x * x + span[0] ** 2);
    xy += weight * (x * y + span[0] * span[1]);
    yy += weight * (y * y + span[1] ** 2);
  }
  const angle = Math.atan2(2 * xy, xx - yy) / 2;
  const [ux, uy] = [Math.cos(angle), Math.sin(angle)];
  const along = [a.from, a.to, b.from, b.to].map(([x, y]) => (x - mx) * ux + (y - my) * uy);
  const [s, t] = [Math.min(...along), Math.max(...along)];
  const beside = Math.max(0, (xx * uy * uy - 2 * xy * ux * uy + yy * ux * ux) / all);
  const off2 = beside + (a.weight * a.off2 + b.weight * b.off2) / all;
  const knots = [...a.knots, ...b.knots];
  return { from: [mx + s * ux, my + s * uy], to: [mx + t * ux, my + t * uy], knots, weight: all, off2 };
}

function offOf({ from, to }: Straight, [x, y]: readonly [number, number]): number {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  return Math.abs((x - from[0]) * (to[1] - from[1]) - (y - from[1]) * (to[0] - from[0])) / length;
}

function lengthOf({ from, to }: Straight): number {
  return Math.hypot(to[0] - from[0], to[1] - from[1]);
}
