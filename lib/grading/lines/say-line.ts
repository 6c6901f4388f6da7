import type { Exercise } from "../../exercise/exercise";
import { toPaperMm } from "../../measure/scale";
import { type DrawnLine, missInSigmas } from "../../perspective/whose-eye/drawn-line";
import { capital } from "../../plan/first-letter";
import type { StageDirection } from "../../stage/frame";
import type { JudgedLine } from "./judgement";
import { CLEAR_SIGMAS } from "./line-precision";

type Off = Omit<JudgedLine, "say">;
type Meant = { readonly line: DrawnLine; readonly direction: StageDirection; readonly element: string };

/** How far along the horizon a crossing is still told by its distance, mm on the sheet. */
const FARTHEST_TOLD_MM = 500;

/** What a line that is off shows, why it matters, and what to do: two sentences or three. */
export function sayLine(exercise: Exercise, held: Off, meant: Meant, scaleRatio: number): string {
  switch (held.rule) {
    case "upright":
      return sayUpright(held);
    case "frontal":
      return sayFrontal(held, meant);
    case "receding":
      return sayReceding(exercise, held, meant, scaleRatio);
  }
}

function sayUpright({ name, turnedDeg, offMm }: Off): string {
  const way = turnedDeg < 0 ? "right" : "left";
  return (
    `${capital(name)} leans ${degrees(turnedDeg)} to the ${way}, ${millimetres(offMm)} over its length. ` +
    "An upright stays upright in the picture at any depth: set its top straight above its foot."
  );
}

function sayFrontal({ name, turnedDeg, offMm }: Off, { direction, element }: Meant): string {
  const rises = turnedDeg > 0 ? "rises" : "falls";
  const rule =
    direction[2] === 0
      ? `${capital(element)} runs parallel to the plaster line there, so its level lines stay level in the picture.`
      : `${capital(element)} runs parallel to the plaster line there, so the line keeps its true slope in the picture.`;
  const what =
    direction[2] === 0
      ? `${rises} ${degrees(turnedDeg)} to the right`
      : `is turned by ${degrees(turnedDeg)} from its slope`;
  return `${capital(name)} ${what}, ${millimetres(offMm)} over its length. ${rule}`;
}

function sayReceding(exercise: Exercise, held: Off, { line, direction }: Meant, scaleRatio: number): string {
  const { name, offMm, place, crosses } = held;
  const target = nameTarget(direction);
  const miss =
    `${capital(name)} misses ${target}: lay a ruler from its near end to that point, and its far end lies ` +
    `${millimetres(offMm)} ${sideOf(line, held)} the ruler.`;
  const { offset, eyeHeight } = exercise.viewer;
  if (direction[0] !== 0 && Math.abs(missInSigmas(line, [offset, eyeHeight, 1])) <= CLEAR_SIGMAS)
    return `${miss} As drawn it runs to the CVP, where only lines square to the plaster line go.`;
  const beside = crosses && direction[2] === 0 ? toPaperMm(crosses[0] - place[0] / place[2], scaleRatio) : null;
  if (beside === null || Math.abs(beside) > FARTHEST_TOLD_MM) return miss;
  return `${miss} As drawn it meets the horizon ${millimetres(beside, 0)} to the ${beside > 0 ? "right" : "left"} of it.`;
}

/** What a direction vanishes in, in the trade's words. */
function nameTarget([dx, , dz]: StageDirection): string {
  if (dz === 0) return dx === 0 ? "the CVP" : "its vanishing point on the horizon";
  return dx === 0 ? "its vanishing point straight over or under the CVP" : "its vanishing point off the horizon";
}

/** Whether the far end lies above the ruler or below it; of a steep line, to its left or right. */
function sideOf({ ends: [near, far] }: DrawnLine, { place }: Pick<Off, "place">): string {
  const [x, y, w] = place;
  const toward = [x - near[0] * w, y - near[1] * w] as const;
  const run = [far[0] - near[0], far[1] - near[1]] as const;
  const turn = toward[0] * run[1] - toward[1] * run[0];
  // Off the ruler at a right angle, on the side to which the far end turns.
  const off = [-toward[1] * turn, toward[0] * turn] as const;
  if (Math.abs(off[1]) >= Math.abs(off[0])) return off[1] > 0 ? "above" : "below";
  return off[0] > 0 ? "to the right of" : "to the left of";
}

function degrees(deg: number): string {
  return `${Math.abs(deg).toFixed(1)}°`;
}

export function millimetres(mm: number, digits = 1): string {
  return `${Math.abs(mm).toFixed(digits)} mm`;
}
