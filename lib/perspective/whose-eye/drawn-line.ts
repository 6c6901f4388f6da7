import type { Vector3 } from "../../geometry/matrix3";
import type { Vector2 } from "../../geometry/vector";
import { cross3, dot3 } from "../../geometry/vector3";

/**
 * A straight line as drawn, by its two ends, in any one frame whose first axis runs right and second up. `sigma`: how far
 * each end may lie off the line that was meant, across it, one standard deviation in the frame's unit, above 0.
 */
export type DrawnLine = { readonly ends: readonly [Vector2, Vector2]; readonly sigma: number };

/**
 * A place where lines go, finite or not: [x, y, w] stands for the point (x / w, y / w), and with w = 0 for the direction
 * (x, y) of parallel lines. Its length and sign carry no meaning.
 */
export type VanishingPlace = Vector3;

/** The line through both ends, as the vector that is square to every place on it. */
export function lineVector({ ends: [p, q] }: Pick<DrawnLine, "ends">): Vector3 {
  return cross3([p[0], p[1], 1], [q[0], q[1], 1]);
}

/**
 * By how much a line misses a place, in standard deviations of what a hand does at its ends: the determinant of both ends
 * and the place over its own standard deviation. 0 for a line without length. The sign tells the side.
 */
export function missInSigmas(line: DrawnLine, place: VanishingPlace): number {
  const variance = missVariance(line, place);
  return variance > 0 ? dot3(lineVector(line), place) / Math.sqrt(variance) : 0;
}

/** Variance of the determinant of both ends and a place: sigma squared times the squared reaches from the ends to the place. */
function missVariance({ ends, sigma }: DrawnLine, [x, y, w]: VanishingPlace): number {
  return sigma ** 2 * ends.reduce((sum, [px, py]) => sum + (x - px * w) ** 2 + (y - py * w) ** 2, 0);
}

/** How `missInSigmas` changes with the place. */
export function missSlope(line: DrawnLine, place: VanishingPlace): Vector3 {
  const variance = missVariance(line, place);
  if (!(variance > 0)) return [0, 0, 0];
  const normal = lineVector(line);
  const [x, y, w] = place;
  const half = line.ends.reduce<Vector3>(
    ([sx, sy, sw], [px, py]) => {
      const [u, v] = [x - px * w, y - py * w];
      return [sx + u, sy + v, sw - px * u - py * v];
    },
    [0, 0, 0],
  );
  const root = Math.sqrt(variance);
  const share = (dot3(normal, place) * line.sigma ** 2) / variance;
  return [
    (normal[0] - share * half[0]) / root,
    (normal[1] - share * half[1]) / root,
    (normal[2] - share * half[2]) / root,
  ];
}

/** The sum of the squares of lines' misses of a place, in their sigmas. */
export function squaredMisses(lines: readonly DrawnLine[], place: VanishingPlace): number {
  return lines.reduce((sum, line) => sum + missInSigmas(line, place) ** 2, 0);
}
