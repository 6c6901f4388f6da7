import type { Stage } from "../../stage/stage";
import type { Plan } from "../plan";
import { clothSolid } from "./cloth-solid";
import { columnSolid } from "./column-solid";
import { doorLeaves } from "./door-leaf";
import { furnitureSolid } from "./furniture/furniture-solid";
import { joinSolids } from "./join-solids";
import { platformSolid } from "./platform-solid";
import type { Solid } from "./solid";
import { solidOfFaces } from "./solid-of-faces";
import { stairSolid } from "./stair-solid";
import { wallSketch } from "./wall-sketch";
import { wallSpace } from "./wall-space";
import { windowSash } from "./window-sash";

/**
 * The set as bodies, metres, stage frame: walls with their thickness, reveals, leaves ajar and sashes, platforms, stairs,
 * furniture, columns and masking, in that order, their feet on the floor. Faces are opaque and seen from both sides. What
 * cannot be placed (a wall without its corner, an opening past its wall's end, a flight of no width) is left out; the sense
 * checks say so.
 */
export function solidsOfPlan(plan: Plan, stage: Pick<Stage, "rake">): Solid {
  return joinSolids(
    // All walls at once, so that walls that meet share the edges they meet in.
    solidOfFaces(plan.walls.flatMap((wall) => wallSketch(plan, wall, stage))),
    ...plan.walls.flatMap((wall) => {
      const space = wallSpace(plan, wall, stage);
      if (!space) return [];
      return wall.openings.flatMap((opening) => {
        if (opening.kind === "door") return doorLeaves(space, stage, opening);
        return opening.kind === "window" ? windowSash(space, stage, opening) : [];
      });
    }),
    ...plan.platforms.map((platform) => platformSolid(platform, stage)),
    ...plan.stairs.map((stair) => stairSolid(plan, stair, stage)),
    ...plan.furniture.map((item) => furnitureSolid(item, stage)),
    ...plan.columns.map((column) => columnSolid(column, stage)),
    ...plan.masking.map((cloth) => clothSolid(cloth, stage)),
  );
}
