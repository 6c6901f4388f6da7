import { bezierPoints } from "../../../geometry/bezier-points";

/** A piano at least this deep is a grand, metres. */
export const GRAND_FROM_M = 1.2;

type Pair = readonly [u: number, v: number];

/**
 * A grand piano seen from above in its own frame, u to the right and v away from its front, metres from its centre,
 * counter-clockwise from its left-near corner: straight along the bass side at the left; the treble side bends in to a
 * rounded tail. It touches all four sides of its box. Each of its three bends has `pieces` straight pieces, or as many as
 * a drawn curve has.
 */
export function grandOutline(width: number, depth: number, pieces?: number): readonly Pair[] {
  const at = (u: number, v: number): Pair => [(u * width) / 2, (v - 0.5) * depth];
  return [
    at(-1, 0),
    at(1, 0),
    ...bezierPoints(at(1, 0.42), at(1, 0.64), at(0.22, 0.52), at(0.12, 0.76), pieces),
    ...bezierPoints(at(0.12, 0.76), at(0.04, 0.94), at(-0.2, 1), at(-0.5, 1), pieces).slice(1),
    ...bezierPoints(at(-0.5, 1), at(-0.76, 1), at(-1, 0.94), at(-1, 0.78), pieces).slice(1),
  ];
}
