import { leftOf, subtract, unit } from "../geometry/vector";
import type { PlanPoint } from "../stage/frame";
import type { Opening, Plan, Wall } from "./plan";

/** A wall's drawn line in the plan. `along` and `offstage` are unit directions of the plan. */
export type WallLine = {
  readonly from: PlanPoint;
  readonly to: PlanPoint;
  readonly length: number;
  readonly along: PlanPoint;
  readonly offstage: PlanPoint;
};

/** The drawn line of a wall, or null when a corner is missing or both are one point. */
export function wallLine(plan: Pick<Plan, "corners">, wall: Wall): WallLine | null {
  const from = plan.corners.get(wall.from);
  const to = plan.corners.get(wall.to);
  if (!from || !to) return null;
  const along = unit(subtract(to, from));
  if (!along) return null;
  const left = leftOf(along);
  const offstage: PlanPoint = wall.onstage === "right" ? left : [-left[0], -left[1]];
  return { from, to, length: Math.hypot(to[0] - from[0], to[1] - from[1]), along, offstage };
}

/** The place on a wall's drawn line that lies `distance` metres from its `from` corner. */
export function placeOnWall({ from, along }: WallLine, distance: number): PlanPoint {
  return [from[0] + along[0] * distance, from[1] + along[1] * distance];
}

export type Jambs = { readonly start: PlanPoint; readonly middle: PlanPoint; readonly end: PlanPoint };

/** The feet of an opening's jambs on the drawn line, and the point midway. */
export function openingJambs(line: WallLine, opening: Pick<Opening, "at" | "width">): Jambs {
  return {
    start: placeOnWall(line, opening.at),
    middle: placeOnWall(line, opening.at + opening.width / 2),
    end: placeOnWall(line, opening.at + opening.width),
  };
}
