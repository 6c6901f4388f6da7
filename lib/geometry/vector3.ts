import type { Vector3 } from "./matrix3";

/** Vectors in space: any three numbers in one frame. Results are fresh; nothing is normalised. */

export function subtract3([ax, ay, az]: Vector3, [bx, by, bz]: Vector3): Vector3 {
  return [ax - bx, ay - by, az - bz];
}

export function dot3([ax, ay, az]: Vector3, [bx, by, bz]: Vector3): number {
  return ax * bx + ay * by + az * bz;
}

/** Square to both, right-handed; of no length when they are parallel. */
export function cross3([ax, ay, az]: Vector3, [bx, by, bz]: Vector3): Vector3 {
  return [ay * bz - az * by, az * bx - ax * bz, ax * by - ay * bx];
}

/** The point `t` of the way from `a` to `b`; `t` may lie outside 0 to 1. */
export function between3([ax, ay, az]: Vector3, [bx, by, bz]: Vector3, t: number): Vector3 {
  return [ax + (bx - ax) * t, ay + (by - ay) * t, az + (bz - az) * t];
}
