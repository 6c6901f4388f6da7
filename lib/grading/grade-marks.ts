import type { Exercise } from "../exercise/exercise";
import { exercisePoints, type ProjectedPoint } from "../exercise/exercise-points";
import type { Mark, MarkSet } from "../exercise/marks";
import { tolerances } from "../exercise/tolerance";
import type { Asked } from "../habits/asked";
import type { MarkHabit } from "../habits/claim";
import { classify } from "../habits/classify";
import { sayHabits } from "../habits/say-habits";
import { parseScale } from "../measure/scale";
import type { PicturePoint, PlanPoint } from "../stage/frame";
import type { FeedbackWords, Grade, GradedMark } from "./grade";
import { fitViewer, type Sighting } from "./implied-viewer";
import { type Judged, judgeMark, standsAt } from "./judge-mark";
import { sayHow } from "./say-how";
import { sayMeaning } from "./say-meaning";
import { sayWhere } from "./say-where";
import { sayWhy } from "./say-why";
import { lessHints, scoreExercise, scoreMark } from "./score";

/**
 * Grades a set of marks. The exercise must have passed the sense checks, and every mark must be for an asked point
 * (see `unaskedMark`); of two marks for one point the later counts. Each hint taken costs a mark some of its score.
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
  const observed = judged.flatMap((mark) =>
    mark.seen === null ? [] : [{ ...mark, mark: mark.seen, toleranceMm: allowed.get(mark.point.name) as number }],
  );
  const found = classify(exercise, points, observed, scaleRatio);
  const marks = judged.map((mark) => {
    const i = observed.findIndex(({ point }) => point === mark.point);
    const held = { habits: found.marks[i] ?? [], asked: found.asked[i] ?? null };
    const graded = gradeMark(exercise, mark, held, allowed.get(mark.point.name) as number, scaleRatio);
    return { ...graded, score: lessHints(graded.score, hintsAt(set, graded.point)) };
  });
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
    habits: found.claims,
    impliedViewer: fitViewer(
      judged.map((mark) => sighting(exercise, mark)),
      exercise.viewer,
      scaleRatio,
    ),
  };
}

/** Hints taken at a point, as the set records them. */
function hintsAt({ hints }: MarkSet, point: string): number {
  return hints && Object.hasOwn(hints, point) ? (hints[point] ?? 0) : 0;
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

type Held = { readonly habits: readonly MarkHabit[]; readonly asked: Asked | null };

function gradeMark(
  exercise: Exercise,
  judged: Judged,
  { habits, asked }: Held,
  toleranceMm: number,
  scaleRatio: number,
): GradedMark {
  const within = judged.offMm !== null && judged.offMm <= toleranceMm;
  const words: FeedbackWords = {
    where: sayWhere(judged, exercise.task.kind, within, toleranceMm, scaleRatio),
    means: within ? "" : sayMeaning(judged, exercise),
    why: (!within && asked && sayHabits(habits, asked)) || sayWhy(judged, within, exercise),
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
    habit: habits[0]?.id ?? null,
    habitPlace: habits[0]?.place ?? null,
    feedback: [words.where, words.means, words.why, words.how].filter((part) => part !== "").join(" "),
    words,
  };
}

/** What a mark says of the eye: the place of the stage, and where it was drawn. Of a plan mark, the place it was read as. */
function sighting(exercise: Exercise, { point, at, target }: Judged): Sighting {
  if (exercise.task.kind === "plan-to-picture") return { stage: point.at, picture: at as PicturePoint };
  return { stage: standsAt(exercise, point, at as PlanPoint), picture: target };
}
