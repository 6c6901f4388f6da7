import { checkSense } from "../../exercise/check-sense";
import type { Strictness } from "../../exercise/exercise";
import { readExercise } from "../../exercise/read-exercise";
import { readMarks } from "../../exercise/read-marks";
import type { Grade } from "../../grading/grade";
import { gradeMarks, unaskedMark } from "../../grading/grade-marks";

export type GradedAgain =
  | { readonly ok: true; readonly grade: Grade }
  | { readonly ok: false; readonly sentence: string };

/** Grades kept marks by an exercise's file, as strictly as is said; null leaves the exercise's own. */
export function gradeAgain(exerciseText: string, marksText: string, strictness: Strictness | null): GradedAgain {
  const reading = readExercise(exerciseText);
  if (!reading.ok) return { ok: false, sentence: "The exercise cannot be read by this Plasterline." };
  if (checkSense(reading.exercise).some(({ weight }) => weight === "fault"))
    return { ok: false, sentence: "The exercise makes no sense on its stage." };
  const marks = readMarks(marksText);
  if (!marks.ok) return { ok: false, sentence: "The marks cannot be read." };
  const { exercise } = reading;
  const set = strictness === null ? exercise : { ...exercise, task: { ...exercise.task, strictness } };
  const unasked = unaskedMark(set, marks.marks);
  if (unasked !== null)
    return { ok: false, sentence: `It has a mark for ${marks.marks.marks[unasked]?.point}, which is not asked.` };
  return { ok: true, grade: gradeMarks(set, marks.marks) };
}
