import type { PlanPoint } from "../stage/frame";

/** A sine or cosine this small is a right angle's. */
const RIGHT_ANGLE = 1e-15;

/** The unit direction at an angle from + x, counter-clockwise; along the axes it is so exactly. */
export function directionOf(angle: number): PlanPoint {
  const clean = (value: number) => (Math.abs(value) < RIGHT_ANGLE * Math.max(1, Math.abs(angle)) ? 0 : value);
  return [clean(Math.cos(angle)), clean(Math.sin(angle))];
}
