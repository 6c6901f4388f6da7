import type { Exercise } from "../exercise/exercise";
import { exercisePoints } from "../exercise/exercise-points";
import type { Grade, GradedMark } from "../grading/grade";
import { revealedHabits } from "../habits/reveal";
import { errorParts, type Part, wrongParts } from "./error-parts";
import { guessFor } from "./guess-for";
import { nearOnRakingWall } from "./near-on-wall";
import { type AttemptRecord, type Evidence, type MarkRecord, RECORD_FORMAT } from "./record";
import { skillsCalledOn } from "./skills-called-on";

/** Less true depth than this has no ratio worth keeping, metres. */
const LEAST_DEPTH_M = 0.3;

/** A mark near the horizon means a depth without bounds; a hundredfold says as much. */
const MOST_RATIO = 100;

/** Kept to a tenth of a micrometre of paper, or of a millimetre on the stage: enough for any chart, and short. */
const KEPT_DIGITS = 4;

export type RecordOptions = {
  /** Hints taken, by point. */
  readonly hints?: Readonly<Record<string, number>>;
  /** Of the sheet it was drawn at, when not the exercise's own. */
  readonly scaleRatio?: number;
};

/**
 * The record of a finished exercise. `when` is ISO 8601. The grade must be of this exercise and scored; a mark for a point
 * that the exercise does not name is an error of the program.
 */
export function makeRecord(exercise: Exercise, grade: Grade, when: string, options: RecordOptions = {}): AttemptRecord {
  if (grade.exercise !== exercise.id || grade.score === null)
    throw new Error(
      `A record of ${exercise.id} needs its own scored grade, not an ${grade.outcome} one of ${grade.exercise}.`,
    );
  if (Number.isNaN(Date.parse(when))) throw new Error(`A record needs a moment in ISO 8601, not "${when}".`);
  const points = exercisePoints(exercise);
  const onSheet = new Set(exercise.task.given);
  const marks = grade.marks.map((mark) => {
    const before = new Set(onSheet);
    onSheet.add(mark.point);
    return markRecord(exercise, points, mark, before, options);
  });
  return {
    format: RECORD_FORMAT,
    exercise: exercise.id,
    version: exercise.version,
    when,
    score: kept(grade.score),
    marks,
    habits: grade.habits.map(({ id, odds, marks: at, amount }) => ({ id, odds: kept(odds), marks: [...at], amount })),
    tells: revealedHabits(exercise),
  };
}

function markRecord(
  exercise: Exercise,
  points: ReturnType<typeof exercisePoints>,
  mark: GradedMark,
  onSheet: ReadonlySet<string>,
  { hints = {}, scaleRatio = exercise.scaleRatio }: RecordOptions,
): MarkRecord {
  const point = points.get(mark.point);
  if (!point) throw new Error(`The grade has a mark for ${mark.point}, which ${exercise.id} does not name.`);
  const within = mark.offMm !== null && mark.offMm <= mark.toleranceMm;
  const near = nearOnRakingWall(exercise, points, point, onSheet);
  const parts = errorParts(exercise, point, mark, near?.picture ?? null, scaleRatio);
  const wrong = wrongParts(parts, within, mark.toleranceMm);
  const has = (part: Part) => part === "place" || parts[part] !== null;
  const sheet = { onRakingWall: near !== null, overPlaced: point.over !== null && onSheet.has(point.over) };
  const evidence = skillsCalledOn(exercise, point, sheet).flatMap(({ skill, part }): readonly Evidence[] =>
    has(part)
      ? [
          {
            skill,
            part,
            right: !wrong.has(part),
            guess: kept(guessFor(exercise, point, part, mark.toleranceMm, scaleRatio)),
          },
        ]
      : [],
  );
  const stage = mark.plan && "upstage" in mark.plan ? mark.plan : null;
  return {
    point: mark.point,
    score: kept(mark.score),
    within,
    offMm: keptOrNull(mark.offMm),
    toleranceMm: kept(mark.toleranceMm),
    depthMm: keptOrNull(parts.depth),
    acrossMm: keptOrNull(parts.across),
    heightMm: keptOrNull(parts.height),
    upstageM: keptOrNull(stage?.upstage),
    acrossM: keptOrNull(stage?.across),
    heightM: keptOrNull(mark.plan && "height" in mark.plan ? mark.plan.height : null),
    depthRatio: keptOrNull(stage && depthRatio(point.at[1], stage.upstage)),
    hints: Object.hasOwn(hints, mark.point) ? (hints[mark.point] ?? 0) : 0,
    evidence,
  };
}

/** Drawn depth over true depth, held within `MOST_RATIO`; null before the plaster line, and for a point hardly upstage of it. */
function depthRatio(depth: number, error: number): number | null {
  const drawn = depth + error;
  if (depth < LEAST_DEPTH_M || drawn <= 0) return null;
  return Math.min(MOST_RATIO, Math.max(1 / MOST_RATIO, drawn / depth));
}

function kept(value: number): number {
  return Number(value.toFixed(KEPT_DIGITS)) + 0; // no -0, which would not come back from JSON
}

function keptOrNull(value: number | null | undefined): number | null {
  return value === null || value === undefined ? null : kept(value);
}
