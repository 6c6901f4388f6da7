import { describe, expect, it } from "vitest";
import { layOutPracticeSheet } from "@/lib/drawing/practice-sheet/lay-out-practice-sheet";
import { practiceSheetPages } from "@/lib/drawing/practice-sheet/practice-sheet-pages";
import type { Paper } from "@/lib/sheet/paper-size";
import { type DarkRun, darkRuns, rasterise } from "../rasterise";
import { shippedExercise } from "./exercises";

/** The printed bar and frame are as long as they say, millimetres. */
const EXACT_MM = 0.2;
const DPI = 600;
/** Only the opening's own line is as thick as this, millimetres. */
const THICK_MM = 0.65;
const INCH_MM = 25.4;

/** The two thick lines that a row or column crosses: from the middle of the one to the middle of the other. */
function betweenThick(runs: readonly DarkRun[]): number {
  const thick = runs.filter(({ from, to }) => to - from >= THICK_MM && to - from < 1.5);
  expect(thick).toHaveLength(2);
  const [a, b] = thick.map(({ from, to }) => (from + to) / 2) as [number, number];
  return b - a;
}

/** A 32 ft by 18 ft opening, and one of 10 m by 5.5 m, by arithmetic. */
const FEET = { id: "the-tide-office", bar: 4 * INCH_MM };
const METRES = { id: "raking-wall", bar: 100 };

describe("a sheet as it is printed", () => {
  it.each([
    // 32 and 18 eighths of an inch; 32 and 18 quarters.
    ["letter", FEET, "1/8in=1ft", 4 * INCH_MM, 2.25 * INCH_MM],
    ["a4", FEET, "1/8in=1ft", 4 * INCH_MM, 2.25 * INCH_MM],
    ["tabloid", FEET, "1/4in=1ft", 8 * INCH_MM, 4.5 * INCH_MM],
    ["a3", FEET, "1/4in=1ft", 8 * INCH_MM, 4.5 * INCH_MM],
    ["letter", METRES, "1:100", 100, 55],
    ["a3", METRES, "1:50", 200, 110],
  ] as const)("on %s has its bar and its frame in true size", async (paper: Paper, { id, bar }, scale, wide, high) => {
    const exercise = shippedExercise(id);
    const sheet = layOutPracticeSheet(exercise, { paper });
    const [page] = practiceSheetPages(exercise, { paper });
    if (!sheet || !page) throw new Error("The sheet does not fit.");
    expect(sheet.scale.written).toBe(scale);
    const pixels = await rasterise(page, DPI);
    expect(pixels.width / pixels.perMm).toBeCloseTo(page.widthMm, 0);

    // The bar's own line lies under its parts.
    const longest = Math.max(...darkRuns(pixels, "row", sheet.layout.bar.top + 1.9).map(({ from, to }) => to - from));
    expect(Math.abs(longest - bar)).toBeLessThanOrEqual(EXACT_MM);

    const [x, y] = sheet.layout.picture.at;
    // Just under the opening's top no other line crosses; a step and a half of the rule off the centre line no tick stands.
    const across = betweenThick(darkRuns(pixels, "row", y - high * 0.97));
    expect(Math.abs(across - wide)).toBeLessThanOrEqual(EXACT_MM);
    const ticks = id === FEET.id ? 32 : 20;
    const between = x + (wide / ticks) * 1.5;
    const frame = darkRuns(pixels, "column", between).filter(({ to }) => to < y + 1);
    expect(Math.abs(betweenThick(frame) - high)).toBeLessThanOrEqual(EXACT_MM);
  });
});
