import type { Exercise } from "../exercise/exercise";
import type { MarkSet } from "../exercise/marks";

/**
 * An exercise as it was drawn. On paper nothing is corrected between one mark and the next, so that what stands over a foot
 * stands over the student's own, whatever the exercise says: marks that all come from paper are graded on from them. Of marks
 * made on a screen the exercise itself tells.
 */
export function asDrawn(exercise: Exercise, { marks }: Pick<MarkSet, "marks">): Exercise {
  if (exercise.task.goOnFrom === "own" || marks.length === 0) return exercise;
  if (!marks.every((mark) => mark.with === "paper")) return exercise;
  return { ...exercise, task: { ...exercise.task, goOnFrom: "own" } };
}
