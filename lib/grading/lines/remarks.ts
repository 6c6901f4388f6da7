import type { Exercise } from "../../exercise/exercise";
import type { EyeOfLines, Held, JudgedLine, JudgedMeeting, MeetingVerdict } from "./judgement";
import { differs, sayOwnEye } from "./say-eye";

/** Verdicts that one sentence tells of all the lines that meet; scattered ones are told each by itself. */
const TOLD_AT_ONCE: ReadonlySet<MeetingVerdict> = new Set(["beside", "off the horizon", "parallel"]);

/** Meetings of so many directions settle an eye and have one to spare: then one wrong wall cannot pass for another eye. */
const SETTLE_AN_EYE = 3;
/** The horizon alone takes one less. */
const SETTLE_A_HORIZON = 2;

/**
 * What is worth telling, nothing twice: an eye of their own, if the lines agree on one that is not the exercise's; then
 * meetings and single lines that are off for that eye as well, or else for the exercise's.
 */
export function remarksOf(
  exercise: Exercise,
  held: Held,
  eye: Omit<EyeOfLines, "say">,
  byTheirEye: Held | null,
  scaleRatio: number,
): readonly string[] {
  const { lines, meetings } = held;
  const high = (meeting: JudgedMeeting) => meeting.verdict === "off the horizon";
  const settled = meetings.length >= SETTLE_AN_EYE;
  const isOwn =
    byTheirEye !== null &&
    ((settled && eyeDiffers(exercise, eye)) ||
      (meetings.filter(high).length >= SETTLE_A_HORIZON && heightDiffers(exercise, eye)));
  const isExplained = (meeting: JudgedMeeting, i: number) =>
    isOwn && (settled || high(meeting)) && byTheirEye.meetings[i]?.verdict === "true";
  // Of lines among which one alone is off, that one moved the meeting: it is told, and the meeting is not.
  const isLone = ({ verdict, lines: members }: JudgedMeeting) =>
    verdict !== "parallel" && members.filter((i) => lines[i]?.off).length === 1;
  const explained = meetings.filter(isExplained);
  const told = meetings.filter(
    (meeting, i) => TOLD_AT_ONCE.has(meeting.verdict) && !isExplained(meeting, i) && !isLone(meeting),
  );
  const covered = new Set([...told, ...explained].flatMap((meeting) => meeting.lines));
  const right = (i: number) => isOwn && settled && byTheirEye.lines[i]?.off === false;
  const worst = (one: JudgedLine, other: JudgedLine) => other.offMm / other.allowedMm - one.offMm / one.allowedMm;
  return [
    ...(isOwn ? [sayOwnEye(exercise, eye, scaleRatio)] : []),
    ...told.map(({ say }) => say),
    ...lines
      .filter(({ off }, i) => off && !covered.has(i) && !right(i))
      .sort(worst)
      .map(({ say }) => say),
  ];
}

function heightDiffers({ viewer }: Exercise, { eyeHeight }: Omit<EyeOfLines, "say">): boolean {
  return eyeHeight !== null && differs(eyeHeight, viewer.eyeHeight);
}

function eyeDiffers({ viewer }: Exercise, { distance, eyeHeight, offset }: Omit<EyeOfLines, "say">): boolean {
  return (
    (distance !== null && differs(distance, viewer.distance)) ||
    (eyeHeight !== null && differs(eyeHeight, viewer.eyeHeight)) ||
    (offset !== null && differs(offset, viewer.offset))
  );
}
