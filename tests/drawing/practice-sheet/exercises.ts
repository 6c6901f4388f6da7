import type { Exercise } from "@/lib/exercise/exercise";
import { SHIPPED } from "@/tests/exercises/shipped";

/** An exercise of the course by its id. */
export function shippedExercise(id: string): Exercise {
  const found = SHIPPED.find(({ exercise }) => exercise.id === id);
  if (!found) throw new Error(`The course has no exercise ${id}.`);
  return found.exercise;
}
