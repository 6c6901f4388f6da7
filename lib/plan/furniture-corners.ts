import type { PlanPoint } from "../stage/frame";
import type { Furniture } from "./plan";

/** Signs of the corners before turning: 1 left-near, 2 right-near, 3 right-far, 4 left-far. */
const CORNERS = [
  [-1, -1],
  [1, -1],
  [1, 1],
  [-1, 1],
] as const;

/** The four corners of a piece's bounding box in the plan, turned counter-clockwise about its centre. */
export function furnitureCorners(item: Furniture): readonly PlanPoint[] {
  const [cos, sin] = [Math.cos(item.turn), Math.sin(item.turn)];
  return CORNERS.map(([right, far]) => {
    const [u, v] = [(right * item.width) / 2, (far * item.depth) / 2];
    return [item.at[0] + u * cos - v * sin, item.at[1] + u * sin + v * cos];
  });
}
