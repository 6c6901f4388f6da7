import { toPaperMm } from "../../measure/scale";
import { type DrawnLine, missInSigmas, type VanishingPlace } from "../../perspective/whose-eye/drawn-line";
import { fitMeeting, type Meeting } from "../../perspective/whose-eye/fit-meeting";
import type { PicturePoint } from "../../stage/frame";
import type { JudgedMeeting, MeetingVerdict } from "./judgement";
import { CLEAR_SIGMAS } from "./line-precision";

/** By this much more of squared misses than the best meeting leaves, another is refused: chi-square of two, 95 %. */
const SAME_MEETING = 5.99;

/** Where lines meet that should meet in a vanishing point, and whether they do. */
export function judgeMeeting(
  lines: readonly DrawnLine[],
  vanishingPoint: PicturePoint,
  scaleRatio: number,
): Pick<JudgedMeeting, "at" | "giveMm" | "missMm" | "verdict"> {
  const meeting = fitMeeting(lines);
  const mm = (metres: number) => toPaperMm(metres, scaleRatio);
  const at = meeting.kind === "point" ? meeting.at : null;
  return {
    at,
    giveMm: meeting.kind === "point" ? [mm(Math.sqrt(meeting.spread.xx)), mm(Math.sqrt(meeting.spread.yy))] : null,
    missMm: at && [mm(at[0] - vanishingPoint[0]), mm(at[1] - vanishingPoint[1])],
    verdict: verdictOn(meeting, lines, vanishingPoint),
  };
}

function verdictOn(meeting: Meeting, lines: readonly DrawnLine[], vanishingPoint: PicturePoint): MeetingVerdict {
  if (meeting.kind === "unknown") return "cannot tell";
  if (meeting.misfit !== null && meeting.misfit > CLEAR_SIGMAS) return "scattered";
  const best: VanishingPlace =
    meeting.kind === "point" ? [meeting.at[0], meeting.at[1], 1] : [meeting.direction[0], meeting.direction[1], 0];
  const left = (place: VanishingPlace) => lines.reduce((sum, line) => sum + missInSigmas(line, place) ** 2, 0);
  if (left([vanishingPoint[0], vanishingPoint[1], 1]) - left(best) <= SAME_MEETING) return "true";
  if (meeting.kind === "parallel") return "parallel";
  const above = meeting.at[1] - vanishingPoint[1];
  return Math.abs(above) > CLEAR_SIGMAS * Math.sqrt(meeting.spread.yy) ? "off the horizon" : "beside";
}
