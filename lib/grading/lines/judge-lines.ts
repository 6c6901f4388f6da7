import type { Exercise } from "../../exercise/exercise";
import { listEdges } from "../../plan/list-edges";
import { namePoints } from "../../plan/name-points";
import { eyeOfLines } from "./eye-of-lines";
import { judgeLine, placeOf } from "./judge-line";
import { judgeMeeting } from "./judge-meeting";
import type { Held, JudgedLine, JudgedMeeting, LinesJudgement, PaperLine } from "./judgement";
import { type KnownLine, knowLine, parallelGroups } from "./known-line";
import { remarksOf } from "./remarks";
import { sayEye } from "./say-eye";
import { sayLine } from "./say-line";
import { sayMeeting } from "./say-meeting";

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
  const all = drawn.map((line) => knowLine(exercise, line, scaleRatio, points, edges));
  const known = all.filter((line) => line !== null);
  const receding = known.filter(({ rule }) => rule === "receding");
  const { fitted, ...eye } = eyeOfLines(receding, exercise.viewer);
  const held = holdAgainst(exercise, known, scaleRatio);
  // The same lines held against the eye that they imply: what is right there is no fault of its own.
  const byTheirEye = fitted && holdAgainst({ ...exercise, viewer: fitted }, known, scaleRatio);
  return {
    kind: "judged",
    ...held,
    skipped: all.flatMap((line, i) => (line === null ? [i] : [])),
    eye: { ...eye, say: sayEye(exercise, eye) },
    remarks: remarksOf(exercise, held, eye, byTheirEye, scaleRatio),
  };
}

function holdAgainst(exercise: Exercise, known: readonly KnownLine[], scaleRatio: number): Held {
  const lines = known.map((one): JudgedLine => {
    const place = placeOf(exercise, one.direction);
    const judged = judgeLine(exercise, one.line, place, scaleRatio);
    const { from, to } = one.drawn;
    const named = { from, to, rule: one.rule, name: one.name, place, ...judged };
    return { ...named, say: judged.off ? sayLine(exercise, named, one, scaleRatio) : "" };
  });
  const groups = parallelGroups(known).map((group) => {
    const members = group.map((i) => known[i] as KnownLine);
    return { group, members, elements: [...new Set(members.map(({ element }) => element))] };
  });
  const meetings = groups.map(({ group, members, elements }): JudgedMeeting => {
    const { direction, name } = members[0] as KnownLine;
    const [x, y, w] = placeOf(exercise, direction);
    const met = judgeMeeting(
      members.map(({ line }) => line),
      [x / w, y / w],
      scaleRatio,
    );
    const meeting = { lines: group, elements, vanishingPoint: [x / w, y / w] as const, ...met };
    const isShared = groups.some((other) => other.group !== group && other.elements.join() === elements.join());
    return { ...meeting, say: sayMeeting(exercise, meeting, direction, isShared ? name : null) };
  });
  return { lines, meetings };
}
