import type { Place } from "@/app/_parts/kept-work/attempt";
import type { Bounds } from "@/app/_sheet/view";
import type { PracticeSheet } from "@/lib/drawing/practice-sheet/lay-out-practice-sheet";
import type { SheetPlace } from "@/lib/sheet/place-drawings";
import type { SheetBox } from "@/lib/sheet/sheet-box";

/** Of a sheet, what takes its millimetres to metres of the drawing that is marked: its scale, and where [0, 0] stands on it. */
export type SheetFrame = { readonly ratio: number; readonly at: SheetPlace };

/** The frame of the drawing that an exercise's sheet is marked in: its picture, or the plan where it is read back. */
export function sheetFrame({ scale, exercise, layout }: PracticeSheet): SheetFrame {
  const { at } = exercise.task.kind === "picture-to-plan" ? layout.plan : layout.picture;
  return { ratio: scale.ratio, at };
}

/** Metres of the drawing, across and up, from millimetres of the sheet, right and down. */
export function fromSheet({ ratio, at }: SheetFrame, [right, down]: SheetPlace): Place {
  return [((right - at[0]) * ratio) / 1000, (-(down - at[1]) * ratio) / 1000];
}

/** The inverse of `fromSheet`. */
export function toSheet({ ratio, at }: SheetFrame, [across, up]: Place): SheetPlace {
  return [at[0] + (across * 1000) / ratio, at[1] - (up * 1000) / ratio];
}

/** A box of the sheet as bounds of the drawing. */
export function boundsOfBox(frame: SheetFrame, box: SheetBox): Bounds {
  const [left, top] = fromSheet(frame, [box.left, box.top]);
  const [right, bottom] = fromSheet(frame, [box.right, box.bottom]);
  return { left, right, bottom, top };
}

/** The proscenium opening on the sheet: what the four corners are set on. */
export function openingBox({ scale, exercise, layout }: PracticeSheet): SheetBox {
  const frame: SheetFrame = { ratio: scale.ratio, at: layout.picture.at };
  const { width, height } = exercise.stage.opening;
  const [left, top] = toSheet(frame, [-width / 2, height]);
  const [right, bottom] = toSheet(frame, [width / 2, 0]);
  return { left, top, right, bottom };
}
