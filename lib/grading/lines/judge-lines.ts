import type { Exercise } from "../../exercise/exercise";
import { cross3, subtract3 } from "../../geometry/vector3";
import { toPaperMm } from "../../measure/scale";
import type { DrawnLine } from "../../perspective/whose-eye/drawn-line";
import { listEdges } from "../../plan/list-edges";
import { namePoints } from "../../plan/name-points";
import type { StageDirection } from "../../stage/frame";
import { eyeOfLines } from "./eye-of-lines";
import { directionFrom, judgeLine, placeOf, ruleOf } from "./judge-line";
import { judgeMeeting } from "./judge-meeting";
import type { JudgedLine, JudgedMeeting, LineRule, LinesJudgement, PaperLine } from "./judgement";
import { SHORTEST_LINE_MM, withPrecision } from "./line-precision";
import { edgeBetween, nameLine } from "./name-line";
import { sayEye } from "./say-eye";
import { sayLine } from "./say-line";
import { sayMeeting } from "./say-meeting";

/** Directions that leave each other by less than this sine are parallel on the stage. */
const PARALLEL_SINE = 1e-6;

/** A line with what it is on the stage; `line` runs from its end nearer to the viewer. */
type Known = {
  readonly drawn: PaperLine;
  readonly line: DrawnLine;
  readonly direction: StageDirection;
  readonly rule: LineRule;
  readonly element: string;
};

/**
 * What a drawing on paper shows besides its points: uprights that lean, lines that should stay level and do not, lines that
 * miss their vanishing point, where the edges of parallel walls meet, and the eye that the lines' directions imply. Each is
 * held against the exercise's own eye (for the student's own, see `exerciseForOwnEye`); what a hand's slip explains, a
 * pencil's width at each end and the turn of a line laid by eye, is not remarked on. A line must run between two named points.
 */
export function judgeLines(
  exercise: Exercise,
  drawn: readonly PaperLine[],
  scaleRatio: number = exercise.scaleRatio,
): LinesJudgement {
  if (exercise.task.kind === "picture-to-plan") return { kind: "plan" };
  const points = namePoints(exercise.plan, exercise.stage);
  const edges = listEdges(exercise.plan, points);
  const all = drawn.map((line) => know(exercise, line, scaleRatio, points, edges));
  const known = all.filter((line) => line !== null);
  const lines = known.map((one): JudgedLine => {
    const place = placeOf(exercise, one.direction);
    const judged = judgeLine(exercise, one.line, place, scaleRatio);
    const { from, to } = one.drawn;
    const named = { from, to, rule: one.rule, name: nameLine(edges, points, from, to), place, ...judged };
    return { ...named, say: judged.off ? sayLine(exercise, named, one, scaleRatio) : "" };
  });
  const meetings = parallelGroups(known).map((group): JudgedMeeting => {
    const members = group.map((i) => known[i] as Known);
    const first = members[0] as Known;
    const [x, y, w] = placeOf(exercise, first.direction);
    const met = judgeMeeting(
      members.map(({ line }) => line),
      [x / w, y / w],
      scaleRatio,
    );
    const elements = [...new Set(members.map(({ element }) => element))];
    const meeting = { lines: group, elements, vanishingPoint: [x / w, y / w] as const, ...met };
    return { ...meeting, say: sayMeeting(exercise, meeting, first.direction) };
  });
  const eye = eyeOfLines(
    known.filter(({ rule }) => rule === "receding"),
    exercise.viewer,
  );
  return {
    kind: "judged",
    lines,
    skipped: all.flatMap((line, i) => (line === null ? [i] : [])),
    meetings,
    eye: { ...eye, say: sayEye(exercise, eye) },
    remarks: remarksOf(lines, meetings),
  };
}

function know(
  exercise: Exercise,
  drawn: PaperLine,
  scaleRatio: number,
  points: ReturnType<typeof namePoints>,
  edges: ReturnType<typeof listEdges>,
): Known | null {
  const [from, to] = [points.get(drawn.from), points.get(drawn.to)];
  if (!from || !to)
    throw new Error(`A line runs from ${drawn.from} to ${drawn.to}, and one of them names no point of the plan.`);
  const [a, b] = drawn.at;
  const length = toPaperMm(Math.hypot(b[0] - a[0], b[1] - a[1]), scaleRatio);
  const turned = from.at[1] > to.at[1];
  const direction = directionFrom(turned ? subtract3(from.at, to.at) : subtract3(to.at, from.at));
  const rule = ruleOf(direction);
  if (rule === null || !(length >= SHORTEST_LINE_MM)) return null;
  const element = edgeBetween(edges, drawn.from, drawn.to)?.element ?? from.element;
  return { drawn, line: withPrecision(turned ? [b, a] : [a, b], exercise, scaleRatio), direction, rule, element };
}

/** Places in the list of the receding lines that are parallel on the stage, two and more together. */
function parallelGroups(known: readonly Known[]): readonly (readonly number[])[] {
  const groups: number[][] = [];
  known.forEach(({ rule, direction }, i) => {
    if (rule !== "receding") return;
    const group = groups.find(([first]) => areParallel((known[first as number] as Known).direction, direction));
    if (group) group.push(i);
    else groups.push([i]);
  });
  return groups.filter((group) => group.length > 1);
}

function areParallel(one: StageDirection, other: StageDirection): boolean {
  return Math.hypot(...cross3(one, other)) < PARALLEL_SINE * Math.hypot(...one) * Math.hypot(...other);
}

/** Verdicts that one sentence tells of all the lines that meet; scattered ones are told each by itself. */
const TOLD_AT_ONCE: ReadonlySet<JudgedMeeting["verdict"]> = new Set(["beside", "off the horizon", "parallel"]);

function remarksOf(lines: readonly JudgedLine[], meetings: readonly JudgedMeeting[]): readonly string[] {
  // Of lines among which one alone is off, that one moved the meeting: it is told, and the meeting is not.
  const isLone = (meeting: JudgedMeeting) =>
    meeting.verdict !== "parallel" && meeting.lines.filter((i) => lines[i]?.off).length === 1;
  const told = meetings.filter((meeting) => TOLD_AT_ONCE.has(meeting.verdict) && !isLone(meeting));
  const explained = new Set(told.flatMap((meeting) => meeting.lines));
  const worst = (one: JudgedLine, other: JudgedLine) => other.offMm / other.allowedMm - one.offMm / one.allowedMm;
  return [
    ...told.map(({ say }) => say),
    ...lines
      .filter(({ off }, i) => off && !explained.has(i))
      .sort(worst)
      .map(({ say }) => say),
  ];
}
