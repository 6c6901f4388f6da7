import type { Exercise } from "../../exercise/exercise";
import { exercisePoints, type ProjectedPoint } from "../../exercise/exercise-points";
import { tolerances } from "../../exercise/tolerance";
import { distance } from "../../geometry/vector";
import { judgeMark } from "../../grading/judge-mark";
import { askedPoints, type Observation } from "../../habits/asked";
import { startField } from "../../habits/field";
import { habitName } from "../../habits/habit-name";
import { hypotheses } from "../../habits/hypothesis";
import { questionAt } from "../../habits/question";
import { toPaperMm } from "../../measure/scale";
import type { PicturePoint } from "../../stage/frame";
import type { Place } from "./cloud";

/** One guess held against the truth. */
export type JudgedGuess = {
  readonly at: Place;
  /** On paper, millimetres; null where the mark means no place before the eye. */
  readonly offMm: number | null;
  readonly within: boolean;
  /** Names of the wrong ideas that the mark suggests by itself; several where they cannot be told apart here. */
  readonly habits: readonly string[];
};

export type JudgedVote = {
  /** Where the point truly lies on the drawing that is marked. */
  readonly truth: Place;
  readonly toleranceMm: number;
  readonly guesses: readonly JudgedGuess[];
};

/**
 * Holds guesses for one point of an exercise against the truth, as its turn comes in a demonstration: with everything given
 * or asked before it on the sheet at its true place. A single mark only suggests a wrong idea, so what is named here is a
 * question and no claim. Null for a point that the exercise does not ask or the eye does not see.
 */
export function judgeGuesses(exercise: Exercise, name: string, guesses: readonly Place[]): JudgedVote | null {
  const points = exercisePoints(exercise);
  const point = points.get(name);
  const toleranceMm = tolerances(exercise, points).get(name);
  if (!point?.picture || toleranceMm === undefined) return null;
  const truth: Place =
    exercise.task.kind === "picture-to-plan" ? [point.at[0], point.at[1]] : [point.picture[0], point.picture[1]];
  const ideas = wrongIdeas(exercise, points, name, toleranceMm);
  return {
    truth,
    toleranceMm,
    guesses: guesses.map((at) => {
      const { offMm, seen } = judgeMark(exercise, point, at, null, exercise.scaleRatio);
      const within = offMm !== null && offMm <= toleranceMm;
      return { at, offMm, within, habits: within || !seen ? [] : ideas(seen) };
    }),
  };
}

/** What a mark of this point suggests, with the points asked before it on the sheet at their true places. */
function wrongIdeas(
  exercise: Exercise,
  points: ReadonlyMap<string, ProjectedPoint>,
  name: string,
  toleranceMm: number,
): (mark: PicturePoint) => readonly string[] {
  const { marks } = exercise.task;
  const last = marks.indexOf(name);
  const allowed = tolerances(exercise, points);
  const observations = marks.slice(0, last + 1).flatMap((each): Observation[] => {
    const point = points.get(each);
    const target = point?.picture;
    return point && target ? [{ point, mark: target, target, toleranceMm: allowed.get(each) ?? toleranceMm }] : [];
  });
  const at = observations.length - 1;
  const asked = askedPoints(exercise, points, observations);
  // Where each idea puts the point does not hang on the mark; only how far the mark lies from there does.
  const all = hypotheses(asked, observations, exercise.scaleRatio);
  const mine = observations[at] as Observation;
  return (mark) => {
    const moved = [...observations.slice(0, at), { ...mine, mark }];
    const measured = all.map((one) => {
      const place = one.places[at];
      const offMm = place ? toPaperMm(distance(place, mark), exercise.scaleRatio) : null;
      return { ...one, offMm: one.offMm.map((off, i) => (i === at ? offMm : off)) };
    });
    const ids = questionAt(startField(exercise, moved, measured, exercise.scaleRatio), at).map(({ id }) => id);
    return ids.map(habitName);
  };
}
