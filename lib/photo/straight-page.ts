import type { SheetBox } from "../sheet/sheet-box";
import type { GreyPixels } from "./pixels";

/** A photograph seen straight on: pixel [i, j] shows the place box.left + (i + 0.5) / pixelsPerMm, box.top + (j + 0.5) / pixelsPerMm. */
export type StraightPage = GreyPixels & {
  readonly box: SheetBox;
  readonly pixelsPerMm: number;
};
