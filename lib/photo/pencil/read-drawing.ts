import type { PracticeSheet } from "../../drawing/practice-sheet/lay-out-practice-sheet";
import { studentPage } from "../../drawing/practice-sheet/student-page";
import type { SheetPlace } from "../../sheet/place-drawings";
import type { DrawingReading } from "../drawing-reading";
import type { StraightPage } from "../straight-page";
import { expectedDrawing } from "./expected-drawing";
import { findCorners } from "./find-corners";
import { findStrokes } from "./find-lines";
import { matchPoints } from "./match-points";
import { printedLines } from "./printed-lines";

/**
 * What a student drew on a practice sheet: its pencil lines, where they meet, and which of these places was meant for each
 * point that is asked. `page` shows the sheet's `drawingBox`, at about 8 pixels a millimetre; millimetres of the sheet.
 * Nothing of it is graded before the student has confirmed it. Where nothing is drawn every point's place is null.
 */
export function readDrawing(page: StraightPage, sheet: PracticeSheet): DrawingReading {
  // The number of the copy is printed far from the drawing, so that any copy's page will do.
  const { lines, crosses, mask } = findStrokes(page, printedLines(studentPage(sheet, null), page.box));
  const corners = findCorners(lines, crosses);
  const hidden = (a: SheetPlace, b: SheetPlace) => shareUnderPrint(mask, page, a, b);
  return { lines, corners, points: matchPoints(expectedDrawing(sheet), lines, corners, { crosses, hidden }) };
}

function shareUnderPrint(mask: Uint8Array, page: StraightPage, a: SheetPlace, b: SheetPlace): number {
  const { width, height, box, pixelsPerMm } = page;
  const steps = Math.max(1, Math.ceil(Math.hypot(b[0] - a[0], b[1] - a[1]) * 2));
  let under = 0;
  for (let k = 0; k < steps; k++) {
    const t = (k + 0.5) / steps;
    const x = Math.floor((a[0] + t * (b[0] - a[0]) - box.left) * pixelsPerMm);
    const y = Math.floor((a[1] + t * (b[1] - a[1]) - box.top) * pixelsPerMm);
    if (x >= 0 && y >= 0 && x < width && y < height && mask[y * width + x]) under++;
  }
  return under / steps;
}
