import type { PlanPoint } from "../../stage/frame";

/** A frame of its own laid on the plan: u to the right and v away from the front, turned counter-clockwise, radians. */
export type TurnedFrame = { readonly at: PlanPoint; readonly turn: number };

/** The plan point at (u, v) metres of a turned frame. */
export function fromTurned({ at, turn }: TurnedFrame, u: number, v: number): PlanPoint {
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  return [at[0] + u * cos - v * sin, at[1] + u * sin + v * cos];
}
