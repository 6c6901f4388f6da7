import type { PracticeSheet } from "@/lib/drawing/practice-sheet/lay-out-practice-sheet";
import type { Mark, MarkSet } from "@/lib/exercise/marks";
import type { DrawingReading } from "@/lib/photo/drawing-reading";
import { markFromSheet } from "@/lib/photo/straighten/mark-places";

/** The marks that a student who confirms all that was read hands in. */
export function marksRead(sheet: PracticeSheet, { points }: DrawingReading): MarkSet {
  const { exercise, scale } = sheet;
  const marks = points.flatMap(({ point, at }): Mark[] =>
    at ? [{ point, at: markFromSheet(sheet, at), with: "paper" }] : [],
  );
  return {
    format: "plasterline.marks/1",
    exercise: exercise.id,
    version: exercise.version,
    scale: scale.written,
    marks,
  };
}
