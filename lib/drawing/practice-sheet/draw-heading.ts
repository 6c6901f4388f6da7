import type { SheetBox } from "../../sheet/sheet-box";
import type { DisplayList } from "../display-list";
import { makeLettering, makeStroke } from "../make-stroke";
import { breakLines } from "../paper/lay-out-text";
import { letteredWidthMm } from "../paper/letter-widths";

/** Heights of a title's capitals, the largest that fits is taken; and of what stands under it, millimetres. */
const TITLE_MM = [4.6, 4, 3.5, 3] as const;
const UNDER_MM = 2.1;
const LABEL_MM = 2.1;
/** From a label to the line that is written on. */
const LABEL_APART_MM = 1.5;
/** The lines to write on stand this far over the foot of the box. */
const ROWS_MM = [7.2, 0] as const;

/** The sheet's title with a line under it, in a box at its head; millimetres right and up from the sheet's upper left corner. */
export function drawTitle(title: string, under: string, { left, top, right, bottom }: SheetBox): DisplayList {
  const width = right - left;
  const text = title.toUpperCase();
  const fits = TITLE_MM.find((heightMm) => letteredWidthMm(text, heightMm) <= width);
  const heightMm = fits ?? TITLE_MM[TITLE_MM.length - 1] ?? UNDER_MM;
  const lines = fits ? [text] : breakLines(text, { widthMm: width, heightMm, face: "drafting" }).slice(0, 2);
  const style = { anchor: "start", heightMm } as const;
  return [
    ...lines.map((line, i) =>
      makeLettering(`sheet.title.${i + 1}`, [left, -top - heightMm * (1 + 1.35 * i) - (fits ? 1 : 0)], line, style),
    ),
    makeLettering("sheet.unit", [left, -bottom + 0.6], under, {
      anchor: "start",
      heightMm: UNDER_MM,
      face: "plain",
    }),
  ];
}

/** Lines for name, class and date. */
export function drawNameLines({ left, right, bottom }: SheetBox): DisplayList {
  const half = left + (right - left) * 0.52;
  return [
    ...writingLine("name", "Name", left, right, -bottom + ROWS_MM[0]),
    ...writingLine("class", "Class", left, half - 2, -bottom + ROWS_MM[1]),
    ...writingLine("date", "Date", half, right, -bottom + ROWS_MM[1]),
  ];
}

function writingLine(id: string, label: string, left: number, right: number, y: number): DisplayList {
  const start = left + letteredWidthMm(label, LABEL_MM, "plain") + LABEL_APART_MM;
  return [
    makeLettering(`sheet.${id}`, [left, y], label, { anchor: "start", heightMm: LABEL_MM, face: "plain" }),
    makeStroke(`sheet.${id}.line`, [
      [start, y],
      [right, y],
    ]),
  ];
}
