import type { StagePoint } from "../stage/frame";
import { floorHeight, type Stage } from "../stage/stage";
import type { Viewer } from "../stage/viewer";
import { project } from "./project";

/** Picture height of the floor at depth `y`, metres above the plaster line. */
function floorRise(viewer: Viewer, stage: Pick<Stage, "rake">, y: number): number | null {
  const seen = project(viewer, [viewer.offset, y, floorHeight(stage, y)]);
  return seen.seen ? seen.at[1] : null;
}

/**
 * The share of the floor's drawn height, from plaster line to back wall, that its downstage half takes: more than a half
 * for an eye above the floor. Null where the floor has no drawn height.
 */
export function downstageHalfShare(viewer: Viewer, stage: Pick<Stage, "depth" | "rake">): number | null {
  const half = floorRise(viewer, stage, stage.depth / 2);
  const whole = floorRise(viewer, stage, stage.depth);
  return half === null || whole === null || !(whole > 0) ? null : half / whole;
}

/** What a millimetre of paper is worth at a point of the stage, metres: across, and in depth along the floor there. */
export type PaperWorth = { readonly across: number; readonly depth: number | null };

/**
 * Worth of 1 mm of paper at a stage point. Across: ratio / 1000 / s. In depth, from dZ/dy = ((h - z) + k (D + y)) D / (D + y)^2
 * for a floor of rake k at height z; null where the floor is seen edge on. Null for a point that is not seen.
 */
export function paperWorth(
  viewer: Viewer,
  stage: Pick<Stage, "rake">,
  [x, y, z]: StagePoint,
  scaleRatio: number,
): PaperWorth | null {
  const seen = project(viewer, [x, y, z]);
  if (!seen.seen) return null;
  const millimetre = scaleRatio / 1000;
  const depth = viewer.distance + y;
  const rise = y > 0 ? stage.rake : 0;
  const rate = ((viewer.eyeHeight - z + rise * depth) * viewer.distance) / depth ** 2;
  return { across: millimetre / seen.s, depth: rate === 0 ? null : millimetre / Math.abs(rate) };
}
