import { INCH_M, type LengthUnits } from "../../measure/length";
import { type SheetBox, sheetBox } from "../../sheet/sheet-box";
import type { DisplayList } from "../display-list";
import { makeLettering } from "../make-stroke";
import { layOutText } from "../paper/lay-out-text";
import { filledBox } from "./draw-markers";

const INCH_MM = INCH_M * 1000;
/** The bar that is measured: how long, in how many parts, and what is lettered under which of its ends. */
const BARS = {
  "ft-in": { partMm: INCH_MM, parts: 4, each: 1, said: "4 inches (101.6 mm)", figure: (n: number) => `${n}"` },
  m: { partMm: 10, parts: 10, each: 5, said: "100 mm", figure: (n: number) => `${n * 10}` },
} as const;

/** Height of the unbroken line and of the parts that stand on it, millimetres. */
const LINE_MM = 0.6;
const PART_MM = 1.6;
const FIGURE_MM = 2;
const WORDS_MM = 2;
const APART_MM = 6;
/** The bar stands in from its box, for its first figure to stay within. */
const IN_MM = 1.5;

/** How long the bar is, millimetres: 4 inches where lengths are in feet, else 100 mm. */
export function barLengthMm(units: LengthUnits): number {
  const { partMm, parts } = BARS[units];
  return partMm * parts;
}

/** The check bar with its words to the right, in a box of the sheet; millimetres right and up from the sheet's upper left corner. */
export function drawBar(units: LengthUnits, box: SheetBox): DisplayList {
  const { partMm, parts, each, said, figure } = BARS[units];
  const long = barLengthMm(units);
  const left = box.left + IN_MM;
  const words = `Measure this bar before you draw: it is exactly ${said} long. If it is not, print again at 100 %.`;
  const start = left + long + APART_MM;
  return [
    filledBox("bar", sheetBox(left, box.top + PART_MM, long, LINE_MM), "ink"),
    ...Array.from({ length: parts }, (_, i) => i)
      .filter((i) => i % 2 === 0)
      .map((i) => filledBox(`bar.${i}`, sheetBox(left + i * partMm, box.top, partMm, PART_MM), "ink")),
    ...Array.from({ length: parts + 1 }, (_, i) => i)
      .filter((i) => i % each === 0)
      .map((i) =>
        makeLettering(
          `bar.figure.${i}`,
          [left + i * partMm, -box.top - PART_MM - LINE_MM - 1 - FIGURE_MM],
          i === 0 ? "0" : figure(i),
          { heightMm: FIGURE_MM, face: "plain" },
        ),
      ),
    ...layOutText("bar.words", words, {
      at: [start, -box.top],
      widthMm: box.right - start,
      heightMm: WORDS_MM,
    }).list,
  ];
}
