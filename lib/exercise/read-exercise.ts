import { exerciseSchema } from "./exercise-schema";
import { problemsOf } from "./problem";
import { readJson } from "./read-json";
import { type ExerciseReading, resolveExercise } from "./resolve-exercise";

/** An exercise from the text of its file: its form is checked, its sense is not (see `checkSense`). */
export function readExercise(text: string): ExerciseReading {
  const json = readJson(text);
  return json.ok ? readExerciseJson(json.value) : { ok: false, problems: [json.problem] };
}

/** The same, from JSON parsed already by `readJson`. */
export function readExerciseJson(value: unknown): ExerciseReading {
  const parsed = exerciseSchema.safeParse(value);
  return parsed.success ? resolveExercise(parsed.data) : { ok: false, problems: problemsOf(parsed.error, value) };
}
