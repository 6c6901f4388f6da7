import type { DrawingPoint } from "./display-list";

/** A frame laid on the plan for drawing a symbol in: `u` runs along, `v` runs across (unit directions), metres. */
export type LocalFrame = {
  readonly origin: DrawingPoint;
  readonly along: DrawingPoint;
  readonly across: DrawingPoint;
};

/** The plan point at (u, v) of a local frame. */
export function inFrame({ origin, along, across }: LocalFrame, u: number, v: number): DrawingPoint {
  return [origin[0] + along[0] * u + across[0] * v, origin[1] + along[1] * u + across[1] * v];
}

/** A row of (u, v) pairs as plan points. */
export function allInFrame(frame: LocalFrame, pairs: readonly (readonly [u: number, v: number])[]): DrawingPoint[] {
  return pairs.map(([u, v]) => inFrame(frame, u, v));
}

/** The same frame with its origin moved to (u, v). */
export function movedFrame(frame: LocalFrame, u: number, v: number): LocalFrame {
  return { ...frame, origin: inFrame(frame, u, v) };
}
