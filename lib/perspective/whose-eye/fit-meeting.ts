import { symmetricEigen3 } from "../../geometry/eigen3";
import type { Matrix3, Vector3 } from "../../geometry/matrix3";
import type { Vector2 } from "../../geometry/vector";
import { cross3, dot3 } from "../../geometry/vector3";
import { type DrawnLine, lineVector, missInSigmas, missSlope, type VanishingPlace } from "./drawn-line";

/** Variances and covariance of a point, in the square of its frame's unit. */
export type Spread = { readonly xx: number; readonly xy: number; readonly yy: number };

export type Meeting =
  | {
      readonly kind: "point";
      readonly at: Vector2;
      readonly spread: Spread;
      /** Root mean square of the lines' misses in their own sigmas, over what two lines always meet; null for two lines. */
      readonly misfit: number | null;
    }
  /** So far off that parallel lines could have been meant; `direction` is of length 1. */
  | { readonly kind: "parallel"; readonly direction: Vector2; readonly misfit: number | null }
  /** Fewer than two lines with a length, or all on one line. */
  | { readonly kind: "unknown" };

/** Weighing the lines anew by how far the meeting is settles in a few rounds; the refinement does the rest. */
const WEIGHINGS = 6;
const REFINEMENTS = 40;
/** A turn of the direction by less than this is none. */
const SETTLED = 1e-13;

/** The direction to a meeting is not known when its standard deviation is above this, radians, seen from one reach of the lines before the paper. */
const CANNOT_TELL = 0.6;

/** Within this many standard deviations of infinity, parallel lines could have been meant. */
const FAR_SIGMAS = 2;

/**
 * Where lines meet that are parallel on the stage: least squares of their misses on the sphere of directions, each weighed
 * by what a hand's slip at its ends does to it there, so that short lines count less and far meetings are no special case
 * (after Collins and Weiss 1990, from memory; the refinement is Gauss and Newton's).
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
  const place = refine(local, firstPlace(local));
  const [across, along] = tangents(place);
  const spread = inverse2(normalsOn(local, place, across, along));
  if (!spread || !(spread.xx + spread.yy < CANNOT_TELL ** 2)) return { kind: "unknown" };
  const misfit = used.length > 2 ? Math.sqrt(squares(local, place) / (used.length - 2)) : null;
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

function squares(lines: readonly DrawnLine[], place: VanishingPlace): number {
  return lines.reduce((sum, line) => sum + missInSigmas(line, place) ** 2, 0);
}

/** The direction that is nearest to square to all the lines' vectors, weighed anew as the meeting becomes known. */
function firstPlace(lines: readonly DrawnLine[]): VanishingPlace {
  let weights = lines.map((line) => 1 / Math.hypot(...lineVector(line)));
  let place: VanishingPlace = [0, 0, 1];
  for (let round = 0; round < WEIGHINGS; round++) {
    const m = lines.reduce<Matrix3>(
      (sum, line, i) => addOuter(sum, lineVector(line), (weights[i] as number) ** 2),
      [
        [0, 0, 0],
        [0, 0, 0],
        [0, 0, 0],
      ],
    );
    place = symmetricEigen3(m)[0].vector;
    const found = place;
    weights = lines.map((line) => 1 / weightLength(line, found));
  }
  return place;
}

/** Standard deviation of a line's determinant with a place; never 0 for a line with a length. */
function weightLength({ ends, sigma }: DrawnLine, [x, y, w]: VanishingPlace): number {
  return sigma * Math.hypot(...ends.flatMap(([px, py]) => [x - px * w, y - py * w]));
}

function addOuter([a, b, c]: Matrix3, n: Vector3, weight: number): Matrix3 {
  const row = (r: Vector3, by: number): Vector3 => [
    r[0] + weight * by * n[0],
    r[1] + weight * by * n[1],
    r[2] + weight * by * n[2],
  ];
  return [row(a, n[0]), row(b, n[1]), row(c, n[2])];
}

/** Two directions of length 1, square to a place of length 1 and to each other. */
function tangents(place: VanishingPlace): readonly [Vector3, Vector3] {
  const least = place.reduce((best, value, i) => (Math.abs(value) < Math.abs(place[best] as number) ? i : best), 0);
  const axis: Vector3 = [least === 0 ? 1 : 0, least === 1 ? 1 : 0, least === 2 ? 1 : 0];
  const across = unit3(cross3(place, axis));
  return [across, cross3(place, across)];
}

function unit3(v: Vector3): Vector3 {
  const length = Math.hypot(...v);
  return [v[0] / length, v[1] / length, v[2] / length];
}

function normalsOn(lines: readonly DrawnLine[], place: VanishingPlace, across: Vector3, along: Vector3): Spread {
  return lines.reduce<Spread>(
    ({ xx, xy, yy }, line) => {
      const slope = missSlope(line, place);
      const [a, b] = [dot3(slope, across), dot3(slope, along)];
      return { xx: xx + a * a, xy: xy + a * b, yy: yy + b * b };
    },
    { xx: 0, xy: 0, yy: 0 },
  );
}

function refine(lines: readonly DrawnLine[], start: VanishingPlace): VanishingPlace {
  let place = start;
  let left = squares(lines, place);
  for (let step = 0; step < REFINEMENTS; step++) {
    const [across, along] = tangents(place);
    const inverse = inverse2(normalsOn(lines, place, across, along));
    if (!inverse) return place;
    const pull = lines.reduce<Vector2>(
      ([a, b], line) => {
        const slope = missSlope(line, place);
        const miss = missInSigmas(line, place);
        return [a - dot3(slope, across) * miss, b - dot3(slope, along) * miss];
      },
      [0, 0],
    );
    const change: Vector2 = [inverse.xx * pull[0] + inverse.xy * pull[1], inverse.xy * pull[0] + inverse.yy * pull[1]];
    const next = shortenUntilBetter(lines, place, [across, along], change, left);
    if (!next) return place;
    place = next.place;
    left = next.left;
    if (Math.hypot(...change) < SETTLED) return place;
  }
  return place;
}

function shortenUntilBetter(
  lines: readonly DrawnLine[],
  place: VanishingPlace,
  [across, along]: readonly [Vector3, Vector3],
  [a, b]: Vector2,
  left: number,
): { readonly place: VanishingPlace; readonly left: number } | null {
  for (let share = 1; share > 1e-3; share /= 2) {
    const turned = (i: 0 | 1 | 2) => place[i] + share * (a * across[i] + b * along[i]);
    const next = unit3([turned(0), turned(1), turned(2)]);
    const now = squares(lines, next);
    if (now < left) return { place: next, left: now };
  }
  return null;
}

function inverse2({ xx, xy, yy }: Spread): Spread | null {
  const determinant = xx * yy - xy * xy;
  if (!(determinant > 1e-14 * (xx + yy) ** 2)) return null;
  return { xx: yy / determinant, xy: -xy / determinant, yy: xx / determinant };
}

function quadratic(spread: Spread, v: Vector2): number {
  return mixed(spread, v, v);
}

function mixed({ xx, xy, yy }: Spread, [a, b]: Vector2, [c, d]: Vector2): number {
  return xx * a * c + xy * (a * d + b * c) + yy * b * d;
}
