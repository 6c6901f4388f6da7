import { describe, expect, it, vi } from "vitest";
import { layOutPracticeSheet, type PracticeSheet } from "@/lib/drawing/practice-sheet/lay-out-practice-sheet";
import { studentPage } from "@/lib/drawing/practice-sheet/student-page";
import { exercisePoints } from "@/lib/exercise/exercise-points";
import type { PencilLine } from "@/lib/photo/drawing-reading";
import { drawingBox } from "@/lib/photo/pencil/drawing-box";
import { findLines } from "@/lib/photo/pencil/find-lines";
import { printedLines } from "@/lib/photo/pencil/printed-lines";
import type { SheetPlace } from "@/lib/sheet/place-drawings";
import { shippedExercise } from "../../drawing/practice-sheet/exercises";
import { CLEAR, drawStraightPage, FAINT, type Hand, type PencilStroke, placeOf, strokesOf } from "./draw-straight-page";

// Whole pages are drawn and read, on computers that may have other work.
vi.setConfig({ testTimeout: 120_000 });

/** Both ends of a stroke are found this near, millimetres: half a stroke's width, its wobble, and the ink of the corner. */
const END_MM = 1;

function sheetOf(id: string): PracticeSheet {
  const sheet = layOutPracticeSheet(shippedExercise(id), { paper: "letter" });
  if (!sheet) throw new Error("The sheet does not fit.");
  return sheet;
}

function trueStrokes(sheet: PracticeSheet): readonly PencilStroke[] {
  const points = exercisePoints(sheet.exercise);
  const reading = sheet.exercise.task.kind === "picture-to-plan";
  const marks = sheet.exercise.task.marks.map((name): [string, SheetPlace] => {
    const point = points.get(name);
    return [name, placeOf(sheet, (reading ? point?.at : point?.picture) ?? [NaN, NaN])];
  });
  return strokesOf(sheet, new Map(marks));
}

async function linesOf(sheet: PracticeSheet, strokes: readonly PencilStroke[], hand: Hand) {
  const page = await drawStraightPage(sheet, drawingBox(sheet), strokes, hand);
  return findLines(page, printedLines(studentPage(sheet, null), page.box));
}

function offBy({ from, to }: PencilStroke, line: PencilLine): number {
  const off = (a: SheetPlace, b: SheetPlace) => Math.hypot(a[0] - b[0], a[1] - b[1]);
  return Math.min(Math.max(off(from, line.from), off(to, line.to)), Math.max(off(from, line.to), off(to, line.from)));
}

describe("the lines of a pencil", () => {
  it.each([
    ["the-tide-office", CLEAR],
    ["the-tide-office", FAINT],
    ["alcove", FAINT],
    ["water-steps", CLEAR],
    // Jambs under a printed upright and a head on the printed horizon.
    ["hearth-and-window", CLEAR],
    ["hearth-and-window", FAINT],
  ] as const)("are found on the sheet of %s, clear and faint, from end to end and no others", async (id, pencil) => {
    const sheet = sheetOf(id);
    const strokes = trueStrokes(sheet);
    const lines = await linesOf(sheet, strokes, { ...pencil, seed: 5 });
    const missed = strokes.filter((stroke) => !lines.some((line) => offBy(stroke, line) < END_MM));
    expect(missed.length).toBeLessThanOrEqual(2);
    expect(lines.length).toBeLessThanOrEqual(strokes.length + 2);
    const found = lines.find((line) => offBy(strokes[0] as PencilStroke, line) < END_MM);
    expect(found?.widthMm).toBeGreaterThan(0.3);
    expect(found?.widthMm).toBeLessThan(0.9);
    expect(found?.darkness).toBeGreaterThan(pencil.contrast * 0.6);
    expect(found?.darkness).toBeLessThan(pencil.contrast * 1.2);
    expect(found?.straightMm).toBeLessThan(0.25);
  });

  it("are none on a bare sheet, in uneven light and with noise", async () => {
    for (const id of ["hearth-and-window", "where-the-furniture-stood", "two-pairs-of-doors"])
      for (const noise of [2, 6]) expect(await linesOf(sheetOf(id), [], { ...CLEAR, noise, seed: noise })).toEqual([]);
  });

  it("leave out what the eraser left, and take a line drawn twice for one", async () => {
    const sheet = sheetOf("raking-wall");
    const [x, y] = sheet.layout.picture.at;
    const kept: readonly PencilStroke[] = [
      { from: [x - 30, y - 6], to: [x - 4, y - 15] },
      { from: [x - 30, y - 5.6], to: [x - 4, y - 14.6] },
      { from: [x - 4, y - 15], to: [x - 4, y - 40] },
    ];
    const ghost: PencilStroke = { from: [x + 5, y - 8], to: [x + 30, y - 20], pressure: 0.2, widthMm: 0.7 };
    const lines = await linesOf(sheet, [...kept, ghost], { ...CLEAR, seed: 3 });
    expect(lines).toHaveLength(2);
    expect(lines.every((line) => offBy(ghost, line) > END_MM)).toBe(true);
  });
});
