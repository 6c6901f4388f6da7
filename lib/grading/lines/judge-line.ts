import type { Exercise } from "../../exercise/exercise";
import { meet } from "../../geometry/meet";
import { cross, type Vector2 } from "../../geometry/vector";
import { toPaperMm } from "../../measure/scale";
import { type DrawnLine, missInSigmas, type VanishingPlace } from "../../perspective/whose-eye/drawn-line";
import type { PicturePoint, StageDirection } from "../../stage/frame";
import type { JudgedLine, LineRule } from "./judgement";
import { CLEAR_SIGMAS } from "./line-precision";

/** A direction counts as upright, level or parallel to the plaster line when it leaves it by less than this sine. */
const SAME_WAY = 1e-9;

/** A crossing with the horizon farther off than this is none, metres of the picture: no sheet and no wall reaches there. */
const FARTHEST_CROSSING_M = 1e4;

/** A run from one point of the stage to another with its rounding taken out: level, square and upright are so exactly. */
export function directionFrom([dx, dy, dz]: StageDirection): StageDirection {
  const least = SAME_WAY * Math.hypot(dx, dy, dz);
  const part = (size: number) => (Math.abs(size) > least ? size : 0);
  return [part(dx), part(dy), part(dz)];
}

/** What a line is, by its direction on the stage; null for one without a direction. */
export function ruleOf([dx, dy, dz]: StageDirection): LineRule | null {
  if (dy !== 0) return "receding";
  if (dx !== 0) return "frontal";
  return dz !== 0 ? "upright" : null;
}

/** Where lines of a direction run in the picture: e dy + D dx, h dy + D dz, dy, a direction where dy is 0. */
export function placeOf({ viewer }: Pick<Exercise, "viewer">, [dx, dy, dz]: StageDirection): VanishingPlace {
  const { distance, eyeHeight, offset } = viewer;
  return [offset * dy + distance * dx, eyeHeight * dy + distance * dz, dy];
}

/** A line held against where it should run. `near` is its end nearer to the viewer on the stage. */
export function judgeLine(
  exercise: Exercise,
  line: DrawnLine,
  place: VanishingPlace,
  scaleRatio: number,
): Pick<JudgedLine, "turnedDeg" | "offMm" | "allowedMm" | "off" | "crosses"> {
  const [near, far] = line.ends;
  const run: Vector2 = [far[0] - near[0], far[1] - near[1]];
  const [x, y, w] = place;
  const toPlace: Vector2 = [x - near[0] * w, y - near[1] * w];
  // The side of the vanishing point that the line goes to: lines have no sense, so the smaller turn counts.
  const sense = toPlace[0] * run[0] + toPlace[1] * run[1] < 0 ? -1 : 1;
  const meant: Vector2 = [toPlace[0] * sense, toPlace[1] * sense];
  const turned = Math.atan2(cross(meant, run), meant[0] * run[0] + meant[1] * run[1]);
  const sigmas = Math.abs(missInSigmas(line, place));
  // A line that begins in its very vanishing point goes through it, whichever way it runs.
  const off = Math.hypot(...meant) > 0 ? Math.abs(cross(meant, run)) / Math.hypot(...meant) : 0;
  return {
    turnedDeg: (turned * 180) / Math.PI,
    offMm: toPaperMm(off, scaleRatio),
    allowedMm: toPaperMm(CLEAR_SIGMAS * farEndSigma(line, place), scaleRatio),
    off: sigmas > CLEAR_SIGMAS,
    crosses: crossHorizon(line, exercise.viewer.eyeHeight),
  };
}

/** One sigma of the far end beside a ruler laid from the near end to the place: both ends slip. */
function farEndSigma({ ends: [near, far], sigma }: DrawnLine, [x, y, w]: VanishingPlace): number {
  const reach = (end: Vector2) => Math.hypot(x - end[0] * w, y - end[1] * w);
  return reach(near) > 0 ? sigma * Math.hypot(1, reach(far) / reach(near)) : sigma;
}

function crossHorizon({ ends }: DrawnLine, horizon: number): PicturePoint | null {
  const at = meet(ends, [
    [0, horizon],
    [1, horizon],
  ]);
  return at && Math.abs(at[0]) <= FARTHEST_CROSSING_M ? [at[0], horizon] : null;
}
