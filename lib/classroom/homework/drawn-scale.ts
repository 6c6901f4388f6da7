import { layOutPracticeSheet } from "../../drawing/practice-sheet/lay-out-practice-sheet";
import type { Exercise } from "../../exercise/exercise";
import type { MarkSet } from "../../exercise/marks";
import { PAPERS } from "../../sheet/paper-size";

/**
 * The scale that a student's marks are graded at: the one the exercise is set at. Marks from paper say which scale their sheet
 * was printed at, and what is near enough follows it; that is believed only of a scale at which one of the papers has this
 * exercise's sheet, for at any smaller one the hand would be allowed more.
 */
export function drawnScale(exercise: Exercise, { scale, marks }: Pick<MarkSet, "scale" | "marks">): string {
  if (scale === undefined || scale === exercise.scale) return exercise.scale;
  if (!marks.every((mark) => mark.with === "paper")) return exercise.scale;
  const printed = PAPERS.some((paper) => layOutPracticeSheet(exercise, { paper })?.scale.written === scale);
  return printed ? scale : exercise.scale;
}
