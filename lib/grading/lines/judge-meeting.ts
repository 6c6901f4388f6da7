import { toPaperMm } from "../../measure/scale";
import { type DrawnLine, squaredMisses, type VanishingPlace } from "../../perspective/whose-eye/drawn-line";
import { fitMeeting, type Meeting } from "../../perspective/whose-eye/fit-meeting";
import type { PicturePoint } from "../../stage/frame";
import type { JudgedMeeting, MeetingVerdict } from "./judgement";
import { mostMisfit, SAME_HEIGHT, SAME_MEETING } from "./line-precision";

/** Where lines meet that should meet in a vanishing point, and whether they do. */
export function judgeMeeting(
  lines: readonly DrawnLine[],
  vanishingPoint: PicturePoint,
  scaleRatio: number,
): Pick<JudgedMeeting, "at" | "giveMm" | "missMm" | "verdict"> {
  const meeting = fitMeeting(lines);
  const mm = (metres: number) => toPaperMm(metres, scaleRatio);
  const verdict = verdictOn(meeting, lines, vanishingPoint);
  if (meeting.kind !== "point") return { at: null, giveMm: null, missMm: null, verdict };
  const { spread } = meeting;
  const up = meeting.at[1] - vanishingPoint[1];
  // On the horizon the lines miss least not straight under their own meeting, but where its two errors go together.
  const at: PicturePoint =
    verdict === "beside" ? [meeting.at[0] - (spread.xy / spread.yy) * up, vanishingPoint[1]] : meeting.at;
  return {
    at,
    giveMm: [mm(Math.sqrt(spread.xx)), mm(Math.sqrt(spread.yy))],
    missMm: [mm(at[0] - vanishingPoint[0]), mm(at[1] - vanishingPoint[1])],
    verdict,
  };
}

function verdictOn(meeting: Meeting, lines: readonly DrawnLine[], vanishingPoint: PicturePoint): MeetingVerdict {
  if (meeting.kind === "unknown") return "cannot tell";
  if (meeting.misfit !== null && meeting.misfit > mostMisfit(lines.length - 2)) return "scattered";
  const best: VanishingPlace =
    meeting.kind === "point" ? [meeting.at[0], meeting.at[1], 1] : [meeting.direction[0], meeting.direction[1], 0];
  if (squaredMisses(lines, [vanishingPoint[0], vanishingPoint[1], 1]) - squaredMisses(lines, best) <= SAME_MEETING)
    return "true";
  if (meeting.kind === "parallel") return "parallel";
  return (meeting.at[1] - vanishingPoint[1]) ** 2 > SAME_HEIGHT * meeting.spread.yy ? "off the horizon" : "beside";
}
