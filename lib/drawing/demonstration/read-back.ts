import { type Board, distancePointPart, onPaper, type Side } from "../../construction/board";
import type { Step } from "../../construction/step";
import type { Exercise } from "../../exercise/exercise";
import type { ProjectedPoint } from "../../exercise/exercise-points";
import { meet } from "../../geometry/meet";
import { printLength } from "../../measure/print-length";
import { floorVanishingPoint } from "../../perspective/vanishing-point";
import { capital } from "../../plan/first-letter";
import { sayAcross, sayDepth } from "../../plan/say-place";
import { sayPoint } from "../../plan/say-point";
import type { PicturePoint, PlanPoint } from "../../stage/frame";

/** How a point of the picture is read back on to the plan: lines of the picture, and the place they give. */
export type ReadBack = { readonly steps: readonly Step[]; readonly place: PlanPoint };

/** Parts of the distance point that may be used, the whole one first. */
const PARTS = [1, 2, 3, 4] as const;
const PART_WORDS: Readonly<Record<number, string>> = { 1: "", 2: "half ", 3: "third ", 4: "quarter " };
const TIMES_WORDS: Readonly<Record<number, string>> = { 1: "", 2: "twice ", 3: "three times ", 4: "four times " };
/** A depth smaller than this is none: the point stands on the plaster line, metres. */
const NO_DEPTH_M = 1e-9;

/**
 * The construction of a point of the floor, or of a level over it, backwards, from its place in the picture alone. On the
 * picture plane that level is drawn at its own height and true size: the line from the vanishing point of its rays meets it at
 * the offset, and the line from a distance point as far beside that as the point is deep (Brook Taylor's distance points, the
 * figure of any textbook; from memory). Null for a point that is not seen, or for which no ruler finds a crossing.
 */
export function readBack(exercise: Exercise, point: ProjectedPoint): ReadBack | null {
  const { stage, viewer, units } = exercise;
  const at = point.picture;
  if (!at) return null;
  const who = sayPoint(point);
  // What stands on a raked floor is read along the rake; what has a level of its own is read on that level.
  const raked = point.onFloor && stage.rake !== 0 && at[1] > point.base;
  const rise = raked ? floorVanishingPoint(viewer, stage)[1] - viewer.eyeHeight : 0;
  const level = point.onFloor ? point.base : point.at[2];
  const rays: PicturePoint = [viewer.offset, viewer.eyeHeight + rise];
  const ground: readonly [PicturePoint, PicturePoint] = [
    [0, level],
    [1, level],
  ];
  const foot = meet([rays, at], ground);
  if (!foot) return null;
  const raysName = raked ? "the floor's vanishing point, above the CVP," : "the CVP";
  const groundName = level === 0 ? "the plaster line" : `the level ${printLength(level, units)} over the plaster line`;
  const first: Step[] = [
    {
      do: "line",
      through: [rays, foot],
      toward: "centre vanishing point",
      say: `Draw from ${raysName} through ${who} to ${groundName}.`,
    },
    {
      do: "mark",
      at: foot,
      say: `There sizes are true: read the offset, ${sayAcross(foot[0], units)}.`,
    },
  ];
  if (Math.abs(at[1] - level) < NO_DEPTH_M) return { steps: first, place: [foot[0], 0] };
  const { part, side } = chooseDistancePoint(exercise, at, rise, ground, foot);
  const [X, Z] = distancePointPart(viewer, part, side);
  const from: PicturePoint = [X, Z + rise];
  const mark = meet([from, at], ground);
  if (!mark) return null;
  const beside = (mark[0] - foot[0]) * (side === "left" ? 1 : -1);
  const depth = beside * part;
  const name = `the ${side} ${PART_WORDS[part]}distance point`;
  return {
    place: [foot[0], depth],
    steps: [
      ...first,
      {
        do: "line",
        through: [from, mark],
        toward: `${PART_WORDS[part]}distance point`,
        say: `Draw from ${name}${raked ? ", raised as the floor is," : ""} through ${who} to ${groundName}.`,
      },
      {
        do: "mark",
        at: mark,
        say: `It falls ${printLength(Math.abs(beside), units)} beside mark 2. ${capital(TIMES_WORDS[part] ? `${TIMES_WORDS[part]}that is` : "that is")} the depth: ${sayDepth(depth, units)}.`,
      },
    ],
  };
}

/** The fullest distance point that lies on the paper with its mark; failing all, the quarter. */
function chooseDistancePoint(
  exercise: Exercise,
  at: PicturePoint,
  rise: number,
  ground: readonly [PicturePoint, PicturePoint],
  foot: PicturePoint,
): { readonly part: number; readonly side: Side } {
  const { plan, stage, viewer, units, scaleRatio } = exercise;
  const board: Board = { plan, stage, viewer, units, scaleRatio, placed: new Map() };
  // From the side the foot is on, the mark falls back towards the middle of the sheet.
  const near: Side = foot[0] < viewer.offset ? "left" : "right";
  const sides: readonly Side[] = near === "left" ? ["left", "right"] : ["right", "left"];
  for (const part of PARTS)
    for (const side of sides) {
      const [X, Z] = distancePointPart(viewer, part, side);
      const mark = meet([[X, Z + rise], at], ground);
      if (onPaper(board, [X, Z]) && mark && onPaper(board, mark)) return { part, side };
    }
  return { part: 4, side: near };
}
