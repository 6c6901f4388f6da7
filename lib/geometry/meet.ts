import { cross, subtract, type Vector2 } from "./vector";

/** Sine of the angle under which two lines count as parallel. */
const PARALLEL_SINE = 1e-12;

export type Line = readonly [Vector2, Vector2];

/** Where two lines meet, each through its two points; null when they are parallel or one has no direction. */
export function meet([a, b]: Line, [c, d]: Line): Vector2 | null {
  const u = subtract(b, a);
  const v = subtract(d, c);
  const turn = cross(u, v);
  if (!(Math.abs(turn) > PARALLEL_SINE * Math.hypot(...u) * Math.hypot(...v))) return null;
  const t = cross(subtract(c, a), v) / turn;
  return [a[0] + u[0] * t, a[1] + u[1] * t];
}
