import { describe, expect, it, vi } from "vitest";
import { layOutPracticeSheet } from "@/lib/drawing/practice-sheet/lay-out-practice-sheet";
import { DOUBTFUL } from "@/lib/photo/drawing-reading";
import { drawingBox } from "@/lib/photo/pencil/drawing-box";
import { readDrawing } from "@/lib/photo/pencil/read-drawing";
import type { SheetPlace } from "@/lib/sheet/place-drawings";
import { shippedExercise } from "../../drawing/practice-sheet/exercises";
import { marksByHabit } from "../photographer/marks-by-habit";
import { CLEAR, drawStraightPage, FAINT, placeOf, strokesOf } from "./draw-straight-page";

// Whole pages are drawn and read, on computers that may have other work.
vi.setConfig({ testTimeout: 120_000 });

/** Farther off than this it is another place that was read, millimetres. */
const ELSEWHERE_MM = 2;

/** One of every unit, true and by a habit. */
const DRAWINGS = [
  ["points-on-the-floor", "plan-depth"],
  ["raking-wall", "square-wall"],
  ["alcove", null],
  ["door-in-a-raking-wall", "full-width"],
  ["a-turned-platform", null],
  ["water-steps", null],
  ["walls-on-a-rake", "too-shallow"],
  ["room-from-its-picture", "plan-depth"],
  ["the-tide-office", null],
] as const;

describe("a drawing on a practice sheet", () => {
  it.each([
    ["clear", CLEAR, 0.3, 1],
    ["faint", FAINT, 0.5, 1.5],
  ] as const)("is read in %s pencil from every unit's sheets", async (_, pencil, median, most) => {
    const offs: number[] = [];
    let [asked, missed, elsewhere, surelyElsewhere] = [0, 0, 0, 0];
    for (const [seed, [id, habit]] of DRAWINGS.entries()) {
      const exercise = shippedExercise(id);
      const sheet = layOutPracticeSheet(exercise, { paper: "letter" });
      if (!sheet) throw new Error("The sheet does not fit.");
      const marks = new Map(
        marksByHabit(exercise, habit, seed).map((mark): [string, SheetPlace] => [mark.point, placeOf(sheet, mark.at)]),
      );
      const page = await drawStraightPage(sheet, drawingBox(sheet), strokesOf(sheet, marks), { ...pencil, seed });
      for (const { point, at, sure } of readDrawing(page, sheet).points) {
        const [x, y] = marks.get(point) as SheetPlace;
        asked += 1;
        if (at === null) missed += 1;
        else {
          const off = Math.hypot(at[0] - x, at[1] - y);
          if (off > ELSEWHERE_MM) elsewhere += 1;
          if (off > ELSEWHERE_MM && sure >= DOUBTFUL) surelyElsewhere += 1;
          offs.push(off);
        }
      }
    }
    offs.sort((a, b) => a - b);
    expect(offs[Math.floor(offs.length / 2)]).toBeLessThan(median);
    expect(offs[Math.floor(offs.length * 0.95)]).toBeLessThan(most);
    expect(missed / asked).toBeLessThanOrEqual(0.05);
    expect(elsewhere / asked).toBeLessThanOrEqual(0.02);
    expect(surelyElsewhere).toBe(0);
  });

  it("is not read into an empty sheet", async () => {
    const sheet = layOutPracticeSheet(shippedExercise("two-pairs-of-doors"), { paper: "letter" });
    if (!sheet) throw new Error("The sheet does not fit.");
    const page = await drawStraightPage(sheet, drawingBox(sheet), [], { ...CLEAR, seed: 2 });
    const reading = readDrawing(page, sheet);
    expect(reading.lines).toEqual([]);
    expect(reading.corners).toEqual([]);
    expect(reading.points.map(({ at, sure, corner }) => [at, sure, corner])).toEqual(
      sheet.exercise.task.marks.map(() => [null, 0, null]),
    );
  });
});
