/** Plane vectors: any pair of numbers in one frame. Results are fresh; nothing is normalised unless it says so. */
export type Vector2 = readonly [number, number];

export function subtract([ax, ay]: Vector2, [bx, by]: Vector2): Vector2 {
  return [ax - bx, ay - by];
}

/** The point `t` of the way from `a` to `b`; `t` may lie outside 0 to 1. */
export function between([ax, ay]: Vector2, [bx, by]: Vector2, t: number): Vector2 {
  return [ax + (bx - ax) * t, ay + (by - ay) * t];
}

export function cross([ax, ay]: Vector2, [bx, by]: Vector2): number {
  return ax * by - ay * bx;
}

export function distance([ax, ay]: Vector2, [bx, by]: Vector2): number {
  return Math.hypot(bx - ax, by - ay);
}

/** The unit vector along `v`, or null for one of no length. */
export function unit([x, y]: Vector2): Vector2 | null {
  const length = Math.hypot(x, y);
  return length > 0 && Number.isFinite(length) ? [x / length, y / length] : null;
}

/** A quarter turn counter-clockwise: the left of the direction. */
export function leftOf([x, y]: Vector2): Vector2 {
  return [-y, x];
}
