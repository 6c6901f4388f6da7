import type { Exercise } from "@/lib/exercise/exercise";
import type { Grade } from "@/lib/grading/grade";
import { gradeMarks } from "@/lib/grading/grade-marks";
import type { PicturePoint } from "@/lib/stage/frame";
import { seenPoint } from "./house";

/** Grades an exercise marked truly but for the points said. */
export function gradeWith(exercise: Exercise, drawn: Readonly<Record<string, PicturePoint>> = {}): Grade {
  return gradeMarks(exercise, {
    format: "plasterline.marks/1",
    exercise: exercise.id,
    marks: exercise.task.marks.map((point) => ({ point, at: drawn[point] ?? seenPoint(exercise, point).picture })),
  });
}

export function idsOf({ habits }: Grade): readonly string[] {
  return habits.map(({ id }) => id);
}

/** A place a share of the way from one to another. */
export function towards([X, Z]: PicturePoint, [U, V]: PicturePoint, share: number): PicturePoint {
  return [X + (U - X) * share, Z + (V - Z) * share];
}
