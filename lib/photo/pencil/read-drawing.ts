import type { PracticeSheet } from "../../drawing/practice-sheet/lay-out-practice-sheet";
import { studentPage } from "../../drawing/practice-sheet/student-page";
import type { DrawingReading } from "../drawing-reading";
import type { StraightPage } from "../straight-page";
import { expectedDrawing } from "./expected-drawing";
import { findCorners } from "./find-corners";
import { findLines } from "./find-lines";
import { matchPoints } from "./match-points";
import { printedLines } from "./printed-lines";

/**
 * What a student drew on a practice sheet: its pencil lines, where they meet, and which of these places was meant for each
 * point that is asked. `page` shows the sheet's `drawingBox`, at about 8 pixels a millimetre; millimetres of the sheet.
 * Nothing of it is graded before the student has confirmed it. Where nothing is drawn every point's place is null.
 */
export function readDrawing(page: StraightPage, sheet: PracticeSheet): DrawingReading {
  // The number of the copy is printed far from the drawing, so that any copy's page will do.
  const lines = findLines(page, printedLines(studentPage(sheet, null), page.box));
  const corners = findCorners(lines);
  return { lines, corners, points: matchPoints(expectedDrawing(sheet), lines, corners) };
}
