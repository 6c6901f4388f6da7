import type { Exercise } from "../../exercise/exercise";
import { readExercise } from "../../exercise/read-exercise";
import { type No, no } from "../accounts/answer";

export type TextRead = { readonly ok: true; readonly exercise: Exercise; readonly bytes: number };

/** Problems told at once; mending these usually mends the rest. */
const MOST_TOLD = 3;

/**
 * The text of a plan as it comes in. Its form must be right; whether it makes sense yet does not matter: a plan under way is
 * kept as well.
 */
export function readText(text: string): TextRead | No<"bad-plan"> {
  const reading = readExercise(text);
  if (reading.ok) return { ok: true, exercise: reading.exercise, bytes: Buffer.byteLength(text) };
  const told = reading.problems
    .slice(0, MOST_TOLD)
    .map(({ where, message, hint }) => `${where || "The file"}: ${message} (${hint}).`);
  return no("bad-plan", `This plan cannot be read, so it was not kept. ${told.join(" ")}`);
}
