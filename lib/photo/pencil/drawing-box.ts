import type { PracticeSheet } from "../../drawing/practice-sheet/lay-out-practice-sheet";
import { paperSize } from "../../sheet/paper-size";
import type { SheetBox } from "../../sheet/sheet-box";

/** A student's lines may leave the printed drawing by this much, millimetres. */
const ROUND_MM = 6;

/** The part of a sheet that is drawn on: its picture, or of an exercise that is read back its plan, and a little round it. */
export function drawingBox({ exercise, layout, paper }: PracticeSheet): SheetBox {
  const { boxes } = exercise.task.kind === "picture-to-plan" ? layout.plan : layout.picture;
  const { widthMm, heightMm } = paperSize(paper);
  return {
    left: Math.max(0, Math.min(...boxes.map(({ left }) => left)) - ROUND_MM),
    top: Math.max(0, Math.min(...boxes.map(({ top }) => top)) - ROUND_MM),
    right: Math.min(widthMm, Math.max(...boxes.map(({ right }) => right)) + ROUND_MM),
    bottom: Math.min(heightMm, Math.max(...boxes.map(({ bottom }) => bottom)) + ROUND_MM),
  };
}
