import type { Exercise } from "../exercise/exercise";
import { exercisePoints, type ProjectedPoint } from "../exercise/exercise-points";
import type { Mark, MarkSet } from "../exercise/marks";
import { tolerances } from "../exercise/tolerance";
import { parseScale } from "../measure/scale";
import type { PicturePoint, StagePoint } from "../stage/frame";
import { floorHeight } from "../stage/stage";
import type { FeedbackWords, Grade, GradedMark } from "./grade";
import { fitViewer, type Sighting } from "./implied-viewer";
import { type Judged, judgeMark } from "./judge-mark";
import { sayHow } from "./say-how";
import { sayMeaning } from "./say-meaning";
import { sayWhere } from "./say-where";
import { sayWhy } from "./say-why";
import { scoreExercise, scoreMark } from "./score";

/**
 * Grades a set of marks. The exercise must have passed the sense checks, and every mark must be for an asked point
 * (see `unaskedMark`); of two marks for one point the later counts.
 */
export function gradeMarks(exercise: Exercise, set: MarkSet): Grade {
  const points = exercisePoints(exercise);
  const scaleRatio = (set.scale === undefined ? null : parseScale(set.scale)) ?? exercise.scaleRatio;
  const allowed = tolerances(exercise, points, scaleRatio);
  const placed = new Map(set.marks.map((mark) => [mark.point, mark]));
  const asked = exercise.task.marks.map((name) => ({ name, point: known(points, name), mark: placed.get(name) }));
  const judged = asked.flatMap(({ point, mark }) =>
    mark ? [judgeMark(exercise, point, mark.at, ownFoot(exercise, points, placed, point), scaleRatio)] : [],
  );
  const marks = judged.map((mark) => gradeMark(exercise, mark, allowed.get(mark.point.name) as number, scaleRatio));
  return {
    exercise: exercise.id,
    outcome: marks.length === 0 ? "unready" : "scored",
    score:
      marks.length === 0
        ? null
        : scoreExercise(
            marks.map((mark) => mark.score),
            asked.length,
          ),
    marks,
    missing: asked.filter(({ mark }) => !mark).map(({ name }) => name),
    habits: [],
    impliedViewer: fitViewer(
      judged.map((mark) => sighting(exercise, mark)),
      exercise.viewer,
      scaleRatio,
    ),
  };
}

/** The first mark for a point the task does not ask, by its place in the set; null when there is none. */
export function unaskedMark(exercise: Exercise, set: MarkSet): number | null {
  const asked = new Set(exercise.task.marks);
  const index = set.marks.findIndex((mark) => !asked.has(mark.point));
  return index < 0 ? null : index;
}

function known(points: ReadonlyMap<string, ProjectedPoint>, name: string): ProjectedPoint {
  const point = points.get(name);
  if (!point)
    throw new Error(`The task asks for ${name}, which names no point; the sense checks refuse such an exercise.`);
  return point;
}

/** The student's own mark for the point below, where the drawing goes on from it. */
function ownFoot(
  exercise: Exercise,
  points: ReadonlyMap<string, ProjectedPoint>,
  placed: ReadonlyMap<string, Mark>,
  point: ProjectedPoint,
): { readonly point: ProjectedPoint; readonly at: PicturePoint } | null {
  if (exercise.task.goOnFrom !== "own" || point.over === null) return null;
  const mark = exercise.task.marks.includes(point.over) ? placed.get(point.over) : undefined;
  return mark ? { point: known(points, point.over), at: mark.at as PicturePoint } : null;
}

function gradeMark(exercise: Exercise, judged: Judged, toleranceMm: number, scaleRatio: number): GradedMark {
  const within = judged.offMm !== null && judged.offMm <= toleranceMm;
  const words: FeedbackWords = {
    where: sayWhere(judged, within, toleranceMm, scaleRatio),
    means: within ? "" : sayMeaning(judged, exercise),
    why: sayWhy(judged, within, exercise),
    how: within ? "" : sayHow(judged, exercise),
  };
  return {
    point: judged.point.name,
    at: judged.at,
    true: judged.targetAt,
    offMm: judged.offMm,
    toleranceMm,
    score: scoreMark(judged.offMm, toleranceMm),
    plan: judged.plan,
    habit: null,
    feedback: [words.where, words.means, words.why, words.how].filter((part) => part !== "").join(" "),
    words,
  };
}

/** What a mark says of the eye: the place of the stage, and where it was drawn. Of a plan mark, the place it was read as. */
function sighting(exercise: Exercise, { point, at, target }: Judged): Sighting {
  if (exercise.task.kind === "plan-to-picture") return { stage: point.at, picture: at as PicturePoint };
  const [x, y] = at;
  const stood: StagePoint = [x, y, floorHeight(exercise.stage, y) + point.base];
  return { stage: stood, picture: target };
}
