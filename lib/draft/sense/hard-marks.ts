import type { Exercise } from "../../exercise/exercise";
import { exercisePoints, type ProjectedPoint } from "../../exercise/exercise-points";
import type { Finding } from "../../exercise/finding";
import { HARD_TO_GRADE_M } from "../../exercise/sense-marks";
import { toleranceForDistance, tolerances } from "../../exercise/tolerance";
import { printLength } from "../../measure/print-length";
import { FOOT_SCALES, METRIC_SCALES, parseScale, printScale } from "../../measure/scale";
import { paperWorth } from "../../perspective/foreshortening";
import { project } from "../../perspective/project";
import { namePoints } from "../../plan/name-points";
import type { NamedPoints } from "../../plan/named-point";
import type { Draft } from "../draft";
import type { Edit } from "../edit";
import { applyEdit } from "../edits/apply-edit";
import { findLeast } from "./find-least";
import { listNames, type Note } from "./note";
import { eachOnce, thingOfPoint } from "./note-place";

type Points = ReadonlyMap<string, ProjectedPoint>;

/** The eye is raised to a whole half foot or 100 mm, and no higher than anyone sits: the opening's head. */
const EYE_STEP_M = { "ft-in": 0.1524, m: 0.1 } as const;

/** Every tolerance is at least two pencils' widths, and at most what a sheet far from everything is given (see `tolerances`). */
const FINEST_MM = toleranceForDistance(0, "drafted");
const COARSEST_MM = toleranceForDistance(Number.POSITIVE_INFINITY, "thumbnail");

/** Whether a finding says that a mark is hard to grade. */
export function isHardMark({ where, message }: Finding): boolean {
  return where.startsWith("/task/marks/") && message.includes(" is hard to grade: ");
}

/**
 * The marks that the sense checks found hard to grade, as one note, and the smallest change found to leave none of them: a higher
 * eye, else a larger scale, else to ask fewer.
 */
export function notesOfHardMarks(draft: Draft, findings: readonly Finding[], points: Points): readonly Note[] {
  const { task, units, viewer } = draft.exercise;
  const hard = findings.filter(isHardMark).flatMap(({ where }) => task.marks[Number(where.split("/")[3])] ?? []);
  if (hard.length === 0) return [];
  const named = `${listNames(hard)} ${hard.length === 1 ? "is" : "are"} hard to grade`;
  const eye = printLength(viewer.eyeHeight, units);
  const { remedy, edit } = raiseEye(draft, points) ?? enlarge(draft) ?? askFewer(draft, hard);
  const things = eachOnce(hard.flatMap((name) => points.get(name) ?? []).map(thingOfPoint));
  const say = `${named} with the eye at ${eye}: a millimetre of paper is worth too much of the depth there.`;
  return [{ weight: "note", where: "viewer", things, say, remedy, edit }];
}

type Remedy = { readonly remedy: string; readonly edit: Edit };

/** The lowest eye on a round height that leaves no mark hard; null where none does. An eye set by the back wall keeps it so. */
function raiseEye(draft: Draft, points: Points): Remedy | null {
  const { exercise } = draft;
  const { viewer, stage, units } = exercise;
  const step = EYE_STEP_M[units];
  const first = Math.floor(viewer.eyeHeight / step) + 1;
  const last = Math.floor(stage.opening.height / step);
  const raised = (n: number) => ({ ...viewer, eyeHeight: n * step });
  const raise = (n: number): Edit => ({ edit: "set-viewer", viewer: raised(n) });
  // An eye of its own distance changes nothing else as it rises, and so is tried without making the whole edit each time.
  const quick =
    draft.backWallRise === null
      ? findLeast(first, last, (n) => noneHard({ ...exercise, viewer: raised(n) }, points))
      : null;
  const n = quick !== null && leavesNoneHard(draft, raise(quick)) ? quick : findSlowly();
  return n === null ? null : { remedy: `Raise the eye to ${printLength(n * step, units)}.`, edit: raise(n) };

  function findSlowly(): number | null {
    return findLeast(first, last, (height) => leavesNoneHard(draft, raise(height)));
  }
}

/** The next usual scale that leaves no mark hard; null where none does. */
function enlarge(draft: Draft): Remedy | null {
  const { units, scaleRatio } = draft.exercise;
  const usual: readonly string[] = units === "ft-in" ? FOOT_SCALES : METRIC_SCALES;
  const larger = usual.filter((scale) => (parseScale(scale) ?? scaleRatio) < scaleRatio);
  for (const scale of larger) {
    const edit: Edit = { edit: "set-sheet", units, scale };
    if (leavesNoneHard(draft, edit)) return { remedy: `Draw at ${printScale(scale)}.`, edit };
  }
  return null;
}

function askFewer({ exercise: { task } }: Draft, hard: readonly string[]): Remedy {
  const left = task.marks.filter((name) => !hard.includes(name));
  const remedy = `Do not ask for ${hard.length === 1 ? "it" : "them"}.`;
  return { remedy, edit: { edit: "set-task", task: { marks: left } } };
}

function leavesNoneHard(draft: Draft, edit: Edit): boolean {
  const edited = applyEdit(draft, edit);
  if (!edited.ok) return false;
  const { exercise } = edited.draft;
  return noneHard(exercise, namePoints(exercise.plan, exercise.stage));
}

function noneHard(exercise: Exercise, named: NamedPoints): boolean {
  const { stage, viewer, scaleRatio, task } = exercise;
  const worths = task.marks.flatMap((name) => {
    const point = named.get(name);
    if (!point?.onFloor || !project(viewer, point.at).seen) return [];
    return [{ name, depth: paperWorth(viewer, stage, point.at, scaleRatio)?.depth ?? Number.POSITIVE_INFINITY }];
  });
  // The tolerances of a large plan take long to work out: not where any would do, or none.
  if (worths.some(({ depth }) => depth * FINEST_MM > HARD_TO_GRADE_M)) return false;
  if (worths.every(({ depth }) => depth * COARSEST_MM <= HARD_TO_GRADE_M)) return true;
  const allowed = tolerances(exercise, exercisePoints(exercise));
  return worths.every(({ name, depth }) => depth * (allowed.get(name) ?? 0) <= HARD_TO_GRADE_M);
}
