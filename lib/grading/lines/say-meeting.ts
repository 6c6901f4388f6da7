import type { Exercise } from "../../exercise/exercise";
import type { StageDirection } from "../../stage/frame";
import type { JudgedMeeting } from "./judgement";
import { inARow } from "./name-line";
import { millimetres } from "./say-line";

/** So many elements are named; of more, the rest is counted. */
const NAMED = 4;

/**
 * Where lines meet that are parallel on the stage, and what that means; of a true meeting, the rule that was kept. `like`
 * names one of the lines, where the same elements have edges of other directions too.
 */
export function sayMeeting(
  exercise: Exercise,
  meeting: Omit<JudgedMeeting, "say">,
  direction: StageDirection,
  like: string | null,
): string {
  const { verdict, missMm } = meeting;
  const who = `${sayWho(meeting.elements, direction)}${like === null ? "" : ` (like ${like})`}`;
  const target = sayTarget(direction);
  const level = direction[2] === 0;
  const up = missMm?.[1] ?? 0;
  switch (verdict) {
    case "true":
      return `${who} meet in ${target}: parallel lines that run away from the viewer share one vanishing point.`;
    case "beside":
      return level
        ? `${who} meet on the horizon, but ${sideways(missMm)} ${target}. ${sayAngle(exercise, meeting, direction)}`
        : `${who} meet ${sideways(missMm)} ${target}. Take them all there.`;
    case "off the horizon":
      return level
        ? `${who} meet ${millimetres(up)} ${up > 0 ? "above" : "below"} the horizon. Lines that are level on the stage run to the horizon, whichever way they go: take them to ${target}.`
        : `${who} meet ${millimetres(up)} ${up > 0 ? "above" : "below"} ${target}. A line that climbs runs to a point above the horizon by as much as it climbs.`;
    case "scattered":
      return `${who} do not meet in one point. Parallel lines that run away from the viewer share one vanishing point: take them all to ${target}.`;
    case "parallel":
      return `${who} are drawn parallel on the sheet, or as good as. They run away from the viewer, so in the picture they draw together: take them all to ${target}.`;
    case "cannot tell":
      return `${who} are too short, or too close to one line, to tell where they meet.`;
  }
}

function sayWho(elements: readonly string[], [dx, , dz]: StageDirection): string {
  const what = `The edges of ${sayElements(elements)}`;
  if (dz !== 0) return `${what} that climb the same way`;
  if (dx === 0) return `${what} that run square to the plaster line`;
  return elements.length === 1 ? `The level edges of ${inARow(elements)}` : `${what} that are parallel on the stage`;
}

function sayElements(elements: readonly string[]): string {
  const named = elements.length > NAMED + 1 ? elements.slice(0, NAMED) : elements;
  const more = elements.length - named.length;
  return inARow(more > 0 ? [...named, `${more} more`] : named);
}

function sayTarget([dx, , dz]: StageDirection): string {
  if (dz === 0) return dx === 0 ? "the CVP" : "their vanishing point on the horizon";
  return dx === 0 ? "their vanishing point straight over or under the CVP" : "their vanishing point off the horizon";
}

function sideways(missMm: JudgedMeeting["missMm"]): string {
  const right = missMm?.[0] ?? 0;
  return `${millimetres(right, 0)} to the ${right > 0 ? "right" : "left"} of`;
}

/** The angle to the plaster line that a vanishing point beside the true one stands for. */
function sayAngle({ viewer }: Exercise, { at }: Omit<JudgedMeeting, "say">, [dx, dy]: StageDirection): string {
  if (!at) return "";
  const angle = (across: number, up: number) => Math.round((Math.atan2(up, across) * 180) / Math.PI);
  const drawn = angle(at[0] - viewer.offset, viewer.distance);
  const truth = angle(dx, dy);
  if (drawn === 90 && truth !== 90)
    return `That is the CVP, where only lines square to the plaster line go; these stand at ${sayTurn(truth)} to it.`;
  return drawn === truth
    ? "That is less than a degree on the plan, but a hand can do better."
    : `So drawn they stand at ${sayTurn(drawn)} to the plaster line instead of ${sayTurn(truth)}.`;
}

/** An angle to the plaster line, 0 to 180 degrees from stage left round: as the smaller of both, and which side it opens to. */
function sayTurn(deg: number): string {
  return deg <= 90 ? `${deg}°` : `${180 - deg}° the other way`;
}
