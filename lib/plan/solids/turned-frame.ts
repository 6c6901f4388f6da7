import type { PlanPoint } from "../../stage/frame";

/** A frame of its own laid on the plan: u to the right and v away from the front, turned counter-clockwise, radians. */
export type TurnedFrame = { readonly at: PlanPoint; readonly turn: number };

/** The plan point at (u, v) metres of a turned frame. */
export function fromTurned({ at, turn }: TurnedFrame, u: number, v: number): PlanPoint {
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  return [at[0] + u * cos - v * sin, at[1] + u * sin + v * cos];
}

/** The rectangle between two opposite corners of a turned frame, counter-clockwise from its left-near corner. */
export function turnedRectangle(
  frame: TurnedFrame,
  [u0, u1]: readonly [left: number, right: number],
  [v0, v1]: readonly [near: number, far: number],
): readonly [PlanPoint, PlanPoint, PlanPoint, PlanPoint] {
  return [fromTurned(frame, u0, v0), fromTurned(frame, u1, v0), fromTurned(frame, u1, v1), fromTurned(frame, u0, v1)];
}
