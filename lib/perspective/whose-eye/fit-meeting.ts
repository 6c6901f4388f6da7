import type { Vector3 } from "../../geometry/matrix3";
import type { Vector2 } from "../../geometry/vector";
import { type DrawnLine, squaredMisses } from "./drawn-line";
import { leastMiss, type Spread } from "./least-miss";

export type Meeting =
  | {
      readonly kind: "point";
      readonly at: Vector2;
      /** Variances and covariance of that point, in the square of its frame's unit. */
      readonly spread: Spread;
      /** Root mean square of the lines' misses in their own sigmas, over what two lines always meet; null for two lines. */
      readonly misfit: number | null;
    }
  /** So far off that parallel lines could have been meant; `direction` is of length 1. */
  | { readonly kind: "parallel"; readonly direction: Vector2; readonly misfit: number | null }
  /** Fewer than two lines with a length, or all on one line. */
  | { readonly kind: "unknown" };

/** The direction to a meeting is not known when its standard deviation is above this, radians, seen from one reach of the lines before the paper. */
const CANNOT_TELL = 0.6;

/** Within this many standard deviations of infinity, parallel lines could have been meant. */
const FAR_SIGMAS = 2;

/**
 * Where lines meet that are parallel on the stage: the place that they miss least. Short lines count less than long ones, and
 * a far meeting is no special case.
 */
export function fitMeeting(lines: readonly DrawnLine[]): Meeting {
  const used = lines.filter(({ ends: [p, q] }) => Math.hypot(q[0] - p[0], q[1] - p[1]) > 0);
  if (used.length < 2) return { kind: "unknown" };
  const { middle, reach } = extent(used);
  const local = used.map(
    ({ ends: [p, q], sigma }): DrawnLine => ({
      ends: [
        [(p[0] - middle[0]) / reach, (p[1] - middle[1]) / reach],
        [(q[0] - middle[0]) / reach, (q[1] - middle[1]) / reach],
      ],
      sigma: sigma / reach,
    }),
  );
  const { place, turns, spread } = leastMiss(local);
  const [across, along] = turns;
  if (!spread || !(spread.xx + spread.yy < CANNOT_TELL ** 2)) return { kind: "unknown" };
  const misfit = used.length > 2 ? Math.sqrt(squaredMisses(local, place) / (used.length - 2)) : null;
  const [x, y, w] = place;
  const wVariance = quadratic(spread, [across[2], along[2]]);
  if (w * w <= FAR_SIGMAS ** 2 * wVariance) {
    const length = Math.hypot(x, y);
    return { kind: "parallel", direction: [x / length, y / length], misfit };
  }
  const slope = (t: Vector3): Vector2 => [((t[0] - (x / w) * t[2]) / w) * reach, ((t[1] - (y / w) * t[2]) / w) * reach];
  const [a, b] = [slope(across), slope(along)];
  return {
    kind: "point",
    at: [middle[0] + (x / w) * reach, middle[1] + (y / w) * reach],
    spread: {
      xx: quadratic(spread, [a[0], b[0]]),
      yy: quadratic(spread, [a[1], b[1]]),
      xy: mixed(spread, [a[0], b[0]], [a[1], b[1]]),
    },
    misfit,
  };
}

function extent(lines: readonly DrawnLine[]): { readonly middle: Vector2; readonly reach: number } {
  const ends = lines.flatMap((line) => line.ends);
  const mean = (axis: 0 | 1) => ends.reduce((sum, end) => sum + end[axis], 0) / ends.length;
  const middle: Vector2 = [mean(0), mean(1)];
  const reach = Math.max(...ends.map(([x, y]) => Math.hypot(x - middle[0], y - middle[1])));
  return { middle, reach };
}

function quadratic(spread: Spread, v: Vector2): number {
  return mixed(spread, v, v);
}

function mixed({ xx, xy, yy }: Spread, [a, b]: Vector2, [c, d]: Vector2): number {
  return xx * a * c + xy * (a * d + b * c) + yy * b * d;
}
