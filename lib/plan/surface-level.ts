import { cross, subtract } from "../geometry/vector";
import type { PlanPoint } from "../stage/frame";
import { floorHeight, type Stage } from "../stage/stage";
import type { Plan, Platform, Stair } from "./plan";
import { stairNosings } from "./stair-nosings";

type Floor = Pick<Stage, "rake">;

/** Level of a platform's top above the stage floor at the plaster line, metres. */
export function platformTop({ outline, base, height }: Platform, stage: Floor): number {
  return floorHeight(stage, outline[0]?.[1] ?? 0) + base + height;
}

/**
 * The level one would stand on at a place of the plan, metres: the highest of the floor, the platforms and the treads
 * there. Furniture and walls are not for standing on. `except` names a platform to leave out.
 */
export function surfaceLevel(plan: Plan, stage: Floor, at: PlanPoint, except?: Platform): number {
  const platforms = plan.platforms.filter((p) => p !== except && insideOutline(p.outline, at));
  const treads = plan.stairs.flatMap((stair) => treadLevel(stair, stage, at));
  return Math.max(floorHeight(stage, at[1]), ...platforms.map((p) => platformTop(p, stage)), ...treads);
}

function treadLevel(stair: Stair, stage: Floor, at: PlanPoint): number[] {
  return stairNosings(stair, stage).flatMap(({ start, end }) => {
    const along = subtract([end[0], end[1]], [start[0], start[1]]);
    const width = Math.hypot(...along);
    const to = subtract(at, [start[0], start[1]]);
    const across = (to[0] * along[0] + to[1] * along[1]) / width;
    const back = cross(along, to) / width;
    return across >= 0 && across <= width && back >= 0 && back < stair.tread ? [start[2]] : [];
  });
}

/** Whether a place lies inside an outline: a ray to its right crosses the outline an odd number of times. */
export function insideOutline(outline: readonly PlanPoint[], [x, y]: PlanPoint): boolean {
  let inside = false;
  outline.forEach(([ax, ay], i) => {
    const [bx, by] = outline[(i + 1) % outline.length] as PlanPoint;
    if (ay > y !== by > y && x < ax + ((y - ay) / (by - ay)) * (bx - ax)) inside = !inside;
  });
  return inside;
}
