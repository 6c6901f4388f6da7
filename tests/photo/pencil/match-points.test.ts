import { describe, expect, it } from "vitest";
import { layOutPracticeSheet, type PracticeSheet } from "@/lib/drawing/practice-sheet/lay-out-practice-sheet";
import { DOUBTFUL, type PencilLine, type PointReading } from "@/lib/photo/drawing-reading";
import { expectedDrawing } from "@/lib/photo/pencil/expected-drawing";
import { findCorners } from "@/lib/photo/pencil/find-corners";
import { matchPoints } from "@/lib/photo/pencil/match-points";
import type { SheetPlace } from "@/lib/sheet/place-drawings";
import { shippedExercise } from "../../drawing/practice-sheet/exercises";
import { marksByHabit } from "../photographer/marks-by-habit";
import { placeOf, strokesOf } from "./draw-straight-page";

/** A reading this near to what was drawn is of that place, millimetres. */
const SAME_MM = 1.2;

type Marks = ReadonlyMap<string, SheetPlace>;

function sheetOf(id: string): PracticeSheet {
  const sheet = layOutPracticeSheet(shippedExercise(id), { paper: "letter" });
  if (!sheet) throw new Error("The sheet does not fit.");
  return sheet;
}

function marksOf(sheet: PracticeSheet, habit: string | null): Marks {
  return new Map(
    marksByHabit(shippedExercise(sheet.exercise.id), habit, 1).map((mark) => [mark.point, placeOf(sheet, mark.at)]),
  );
}

/** What is read of lines drawn exactly, so that only the matching is tried. */
function read(sheet: PracticeSheet, marks: Marks, more: readonly PencilLine[] = []): readonly PointReading[] {
  const lines = strokesOf(sheet, marks).map(
    ({ from, to }): PencilLine => ({ from, to, darkness: 0.4, widthMm: 0.45, straightMm: 0.05 }),
  );
  const all = [...lines, ...more];
  return matchPoints(expectedDrawing(sheet), all, findCorners(all), { crosses: [], hidden: () => 0 });
}

function wrong(readings: readonly PointReading[], marks: Marks) {
  return readings.flatMap(({ point, at, sure }) => {
    const mark = marks.get(point);
    if (at === null) return mark ? [`${point} missed`] : [];
    const off = mark ? Math.hypot(at[0] - mark[0], at[1] - mark[1]) : Infinity;
    return off < SAME_MM ? [] : [`${point} ${off.toFixed(1)} mm off, sure ${sure.toFixed(2)}`];
  });
}

describe("the points of a drawing", () => {
  it.each([
    ["points-on-the-floor", null],
    ["points-on-the-floor", "plan-depth"],
    ["points-on-the-floor", "full-width"],
    ["raking-wall", null],
    ["raking-wall", "square-wall"],
    ["alcove", "wrong-side"],
    ["square-and-parallel", "too-deep"],
    ["door-in-a-raking-wall", "full-height"],
    ["hearth-and-window", "full-width"],
    ["a-turned-platform", "half-scale"],
    ["water-steps", null],
    ["water-steps", "even-steps"],
    ["the-tide-office", null],
    ["the-tide-office", "plan-depth"],
    ["walls-on-a-rake", "plan-angle"],
    ["room-from-its-picture", null],
    ["room-from-its-picture", "plan-depth"],
  ] as const)("of %s are known again, drawn with the habit %s", (id, habit) => {
    const sheet = sheetOf(id);
    const marks = marksOf(sheet, habit);
    expect(wrong(read(sheet, marks), marks)).toEqual([]);
  });

  it("are known again in a drawing that lies all alike off by more than walls lie apart", () => {
    const sheet = sheetOf("alcove");
    for (const [dx, dy] of [
      [9, 0],
      [-8, -4],
      [0, -9],
    ] as const) {
      const marks: Marks = new Map([...marksOf(sheet, null)].map(([name, [x, y]]) => [name, [x + dx, y + dy]]));
      expect(wrong(read(sheet, marks), marks)).toEqual([]);
    }
  });

  it("are left out where the student has not drawn them", () => {
    const sheet = sheetOf("the-tide-office");
    const marks = marksOf(sheet, null);
    const some: Marks = new Map([...marks].filter(([name]) => !/^(desk|P1|W3)/.test(name)));
    const readings = read(sheet, some);
    expect(wrong(readings, some)).toEqual([]);
    expect(readings.filter(({ at }) => at === null).map(({ sure }) => sure)).toEqual(Array(9).fill(0));
    expect(read(sheet, new Map()).every(({ at }) => at === null)).toBe(true);
  });

  it("are not taken from hatching and lettering beside them", () => {
    const sheet = sheetOf("raking-wall");
    const marks = marksOf(sheet, null);
    const [x, y] = sheet.layout.picture.at;
    const hatching = Array.from({ length: 9 }, (_, i): PencilLine => {
      const from: SheetPlace = [x + 12 + 1.5 * i, y - 30];
      return { from, to: [from[0] + 4, from[1] + 7], darkness: 0.3, widthMm: 0.4, straightMm: 0.1 };
    });
    const letter = [
      [x - 40, y - 40, x - 38.5, y - 44],
      [x - 38.5, y - 44, x - 37, y - 40],
      [x - 39.4, y - 41.5, x - 37.6, y - 41.5],
    ].map(
      ([a = 0, b = 0, c = 0, d = 0]): PencilLine => ({
        from: [a, b],
        to: [c, d],
        darkness: 0.4,
        widthMm: 0.4,
        straightMm: 0.1,
      }),
    );
    expect(wrong(read(sheet, marks, [...hatching, ...letter]), marks)).toEqual([]);
  });

  it("are doubted where one drawing may mean two things", () => {
    // Eight lamps in a ring and their mirror image are one drawing.
    const sheet = sheetOf("ring-of-lamps");
    const marks = marksOf(sheet, null);
    const sure = read(sheet, marks).filter((reading) => reading.at !== null && reading.sure >= DOUBTFUL);
    expect(wrong(sure, marks)).toEqual([]);
  });
});
