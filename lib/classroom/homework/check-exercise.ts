import { checkSense } from "../../exercise/check-sense";
import type { Exercise } from "../../exercise/exercise";
import type { Problem } from "../../exercise/problem";
import { readExercise } from "../../exercise/read-exercise";

/** An exercise file that can be set, or what is wrong with it, in sentences. */
export type Checked =
  | { readonly ok: true; readonly exercise: Exercise }
  | { readonly ok: false; readonly sentences: readonly string[] };

/** Problems told at once; mending these usually mends the rest. */
const MOST_TOLD = 5;

/** Reads an exercise's text as the course is read: its form, then its sense. Marks that are hard to place are no fault. */
export function checkExercise(text: string): Checked {
  const reading = readExercise(text);
  if (!reading.ok) return { ok: false, sentences: told(reading.problems) };
  const faults = checkSense(reading.exercise).filter(({ weight }) => weight === "fault");
  return faults.length > 0 ? { ok: false, sentences: told(faults) } : { ok: true, exercise: reading.exercise };
}

function told(problems: readonly Problem[]): readonly string[] {
  return problems
    .slice(0, MOST_TOLD)
    .map(({ where, message, hint }) => `${where || "The file"}: ${message} (${hint}).`);
}
