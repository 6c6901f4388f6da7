import { checkSense } from "../../exercise/check-sense";
import type { Exercise, Strictness } from "../../exercise/exercise";
import { readExercise } from "../../exercise/read-exercise";
import { readMarks } from "../../exercise/read-marks";
import { asDrawn } from "../../grading/as-drawn";
import type { Grade } from "../../grading/grade";
import { gradeMarks, unaskedMark } from "../../grading/grade-marks";

type No = { readonly ok: false; readonly sentence: string };

export type GradedAgain = { readonly ok: true; readonly grade: Grade } | No;
export type Measure = { readonly ok: true; readonly exercise: Exercise } | No;

/** An exercise's file to grade by, as strictly as is said; null leaves the exercise's own. */
export function readMeasure(exerciseText: string, strictness: Strictness | null): Measure {
  const reading = readExercise(exerciseText);
  if (!reading.ok) return { ok: false, sentence: "The exercise cannot be read by this Plasterline." };
  const { exercise } = reading;
  if (checkSense(exercise).some(({ weight }) => weight === "fault"))
    return { ok: false, sentence: "The exercise makes no sense on its stage." };
  return {
    ok: true,
    exercise: strictness === null ? exercise : { ...exercise, task: { ...exercise.task, strictness } },
  };
}

/** Grades kept marks. */
export function gradeAgain(measure: Measure, marksText: string): GradedAgain {
  if (!measure.ok) return measure;
  const reading = readMarks(marksText);
  if (!reading.ok) return { ok: false, sentence: "The marks cannot be read." };
  const unasked = unaskedMark(measure.exercise, reading.marks);
  if (unasked !== null)
    return { ok: false, sentence: `It has a mark for ${reading.marks.marks[unasked]?.point}, which is not asked.` };
  return { ok: true, grade: gradeMarks(asDrawn(measure.exercise, reading.marks), reading.marks) };
}
