import type { PlanPoint } from "../stage/frame";
import type { Opening } from "./plan";
import { openingJambs, type WallLine } from "./wall-line";

/** The jambs a door's leaves hang on: both for a pair; for one leaf as written, or else the upstage jamb. */
export function doorHinges(
  line: WallLine,
  opening: Pick<Opening, "at" | "width" | "leaves" | "hinge">,
): readonly ("start" | "end")[] {
  if (opening.leaves === 2) return ["start", "end"];
  const { start, end } = openingJambs(line, opening);
  return [opening.hinge ?? upstageJamb(start, end)];
}

/** The jamb farther upstage; the start jamb of a wall along the plaster line. */
export function upstageJamb(start: PlanPoint, end: PlanPoint): "start" | "end" {
  return end[1] > start[1] ? "end" : "start";
}
