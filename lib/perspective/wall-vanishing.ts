import type { Plan, Wall } from "../plan/plan";
import { wallLine } from "../plan/wall-line";
import type { PicturePoint } from "../stage/frame";
import type { Stage } from "../stage/stage";
import type { Viewer } from "../stage/viewer";
import { measuringPoint, vanishingPoint } from "./vanishing-point";

/** Where a wall's lines go; all null for a wall parallel to the plaster line, or one without a line. */
export type WallVanishing = {
  /** Of its level lines, on the horizon. */
  readonly vanishingPoint: PicturePoint | null;
  /** Of the line of its foot: above the other on a rake, Z = h + k D. A foot on the level floor before the plaster line keeps to the horizon. */
  readonly footVanishingPoint: PicturePoint | null;
  readonly measuringPoint: PicturePoint | null;
};

export function wallVanishing(
  plan: Pick<Plan, "corners">,
  wall: Wall,
  stage: Pick<Stage, "rake">,
  viewer: Viewer,
): WallVanishing {
  const line = wallLine(plan, wall);
  const level = line && vanishingPoint(viewer, [line.along[0], line.along[1], 0]);
  if (!line || !level) return { vanishingPoint: null, footVanishingPoint: null, measuringPoint: null };
  const raked = Math.max(line.from[1], line.to[1]) > 0;
  return {
    vanishingPoint: level,
    footVanishingPoint: vanishingPoint(viewer, [line.along[0], line.along[1], raked ? stage.rake * line.along[1] : 0]),
    measuringPoint: measuringPoint(viewer, level),
  };
}
