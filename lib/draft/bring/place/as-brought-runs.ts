import { cross } from "../../../geometry/vector";
import { FOOT_M } from "../../../measure/length";
import type { Opening } from "../../../plan/plan";
import type { BroughtRun } from "../../edit";
import type { FoundOpening } from "./found-opening";
import type { Run } from "./walk-runs";
import type { WallPiece } from "./wall-piece";

/** Heights that a plan does not tell, metres. */
export type Heights = { readonly wall: number; readonly door: number; readonly sill: number };

/** 14 ft walls, 7 ft doors and window sills at 2 ft 9: common practice, no source. */
export const USUAL_HEIGHTS: Heights = { wall: 14 * FOOT_M, door: 7 * FOOT_M, sill: 2.75 * FOOT_M };

/** Runs of walls and the openings found on each wall, over all runs in order, as an edit takes them. */
export function asBroughtRuns(
  runs: readonly Run[],
  found: readonly (readonly FoundOpening[])[],
  heights: Heights,
): readonly BroughtRun[] {
  let next = 0;
  return runs.map(({ walls, closed }) => ({
    corners: [...walls.map(({ a }) => a), ...(closed ? [] : [(walls.at(-1) as WallPiece).b])],
    closed,
    walls: walls.map((wall) => {
      const onstage = isOnstageLeft(wall) ? "left" : "right";
      const openings = (found[next++] ?? []).map((opening) => asOpening(opening, onstage, heights));
      return { thickness: wall.thickness, onstage, openings };
    }),
  }));
}

function isOnstageLeft(wall: WallPiece): boolean {
  return wall.offstage !== null && cross([wall.b[0] - wall.a[0], wall.b[1] - wall.a[1]], wall.offstage) < 0;
}

function asOpening(found: FoundOpening, onstage: "left" | "right", { wall, door, sill }: Heights): Omit<Opening, "id"> {
  const head = Math.min(door, wall);
  return {
    kind: found.kind,
    at: found.start,
    width: found.end - found.start,
    sill: found.kind === "window" ? Math.min(sill, head / 2) : 0,
    head,
    depth: found.depth,
    leaves: found.leaves,
    hinge: found.hinge,
    swing: found.kind === "door" && found.left === (onstage === "left") ? "onstage" : "offstage",
  };
}
