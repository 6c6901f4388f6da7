import type { Exercise } from "../../exercise/exercise";

/** Stands for a map in the text: the names in it may be any a teacher has chosen. */
const MAP = "entries of a map";

/** An exercise as text, to the last digit: a vote goes on with the exercise it began with, whatever becomes of the file. */
export function freezeExercise(exercise: Exercise): string {
  return JSON.stringify(exercise, (_, value: unknown) => (value instanceof Map ? { [MAP]: [...value] } : value));
}

/** An exercise from what `freezeExercise` wrote. */
export function thawExercise(text: string): Exercise {
  return JSON.parse(text, (_, value: unknown) =>
    typeof value === "object" && value !== null && MAP in value && Array.isArray(value[MAP])
      ? new Map(value[MAP])
      : value,
  ) as Exercise;
}
