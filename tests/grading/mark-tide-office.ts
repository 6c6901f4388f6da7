import type { Exercise } from "@/lib/exercise/exercise";
import type { Mark, MarkSet } from "@/lib/exercise/marks";
import type { GradedMark } from "@/lib/grading/grade";
import { gradeMarks } from "@/lib/grading/grade-marks";

export const FOOT_M = 0.3048;
/** The tide office's eye, 36 ft before the plaster line and 8 ft high, metres. */
export const D = 36 * FOOT_M;
export const H = 8 * FOOT_M;

/** A set of marks for the tide office. */
export function set(marks: readonly Mark[], more: Partial<MarkSet> = {}): MarkSet {
  return { format: "plasterline.marks/1", exercise: "tide-office", marks, ...more };
}

export function mark(point: string, at: readonly [number, number]): Mark {
  return { point, at };
}

/** A mark in the picture's feet. */
export function markFeet(point: string, [X, Z]: readonly [number, number]): Mark {
  return mark(point, [X * FOOT_M, Z * FOOT_M]);
}

/** How one point's mark is graded among others. */
export function graded(exercise: Exercise, point: string, ...marks: readonly Mark[]): GradedMark {
  const found = gradeMarks(exercise, set(marks)).marks.find((one) => one.point === point);
  if (!found) throw new Error(`${point} was not graded.`);
  return found;
}

/** Its four marks in the picture's feet, by hand: s = 36 / (36 + y), X = x s, Z = 8 + (z - 8) s. */
export const TRUE_FEET = {
  "A.foot": [(-12 * 36) / 39, 8 - (8 * 36) / 39],
  "A.top": [(-12 * 36) / 39, 8 + (6 * 36) / 39],
  "B.foot": [-5.04, 2.24],
  "B.top": [-5.04, 12.32],
} as const;
/** Its four marks, all true. */
export const ALL_TRUE = Object.entries(TRUE_FEET).map(([point, at]) => markFeet(point, at));
