import { symmetricEigen3 } from "../../geometry/eigen3";
import type { Matrix3, Vector3 } from "../../geometry/matrix3";
import type { Vector2 } from "../../geometry/vector";
import { cross3, dot3 } from "../../geometry/vector3";
import { type DrawnLine, lineVector, missInSigmas, missSlope, squaredMisses, type VanishingPlace } from "./drawn-line";

/** Variances and covariance of two figures. */
export type Spread = { readonly xx: number; readonly xy: number; readonly yy: number };

/** The place that lines miss least, of length 1, and how its turns along two directions square to it are spread; null where they leave it open. */
export type LeastMiss = {
  readonly place: VanishingPlace;
  readonly turns: readonly [Vector3, Vector3];
  readonly spread: Spread | null;
};

/** Weighing the lines anew by how far the meeting is settles in a few rounds; the refinement does the rest. */
const WEIGHINGS = 6;
const REFINEMENTS = 40;
/** A turn of the direction by less than this is none. */
const SETTLED = 1e-13;

/**
 * Least squares of lines' misses on the sphere of places, each weighed by what a hand's slip at its ends does to it there
 * (after Collins and Weiss 1990, from memory; the refinement is Gauss and Newton's). The frame must have 0 and 1 near the lines.
 */
export function leastMiss(lines: readonly DrawnLine[]): LeastMiss {
  const place = refine(lines, firstPlace(lines));
  const turns = tangents(place);
  return { place, turns, spread: inverse2(normalsOn(lines, place, turns[0], turns[1])) };
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
  let left = squaredMisses(lines, place);
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
    const now = squaredMisses(lines, next);
    if (now < left) return { place: next, left: now };
  }
  return null;
}

function inverse2({ xx, xy, yy }: Spread): Spread | null {
  const determinant = xx * yy - xy * xy;
  if (!(determinant > 1e-14 * (xx + yy) ** 2)) return null;
  return { xx: yy / determinant, xy: -xy / determinant, yy: xx / determinant };
}
