import type { DisplayItem, DrawingPoint } from "../display-list";
import { makeLettering } from "../make-stroke";
import { breakLines, LINE_STEP, layOutText } from "../paper/lay-out-text";
import { letteredWidthMm } from "../paper/letter-widths";
import type { Asked } from "./task-lines";

/** Height of capitals of what is read at arm's length: type of nine points. */
const NOTE_MM = 2.2;
/** A column of tasks is at least this wide, or as wide as its longest line, millimetres. */
const COLUMN_MM = 77;
const GUTTER_MM = 4;
/** Room of a task's number. */
const NUMBER_MM = 6;
/** White under a paragraph, millimetres. */
const PARAGRAPH_MM = 1.6;
/** One line to the next, millimetres. */
const STEP_MM = NOTE_MM * LINE_STEP;

/** A list that counts millimetres, and how high it is. */
type Block = { readonly list: readonly DisplayItem[]; readonly heightMm: number };

/** A paragraph from an upper left corner down. */
export function layOutParagraph(
  id: string,
  text: string,
  widthMm: number,
  [left, top]: DrawingPoint = [0, 0],
  face: "plain" | "strong" = "plain",
): Block {
  if (text.trim() === "") return { list: [], heightMm: 0 };
  const { list, foot } = layOutText(`sheet.${id}`, text, { at: [left, top], widthMm, heightMm: NOTE_MM, face });
  return { list, heightMm: top - foot + NOTE_MM * HANG };
}

/** The sentence for all that a sheet asks, and under it the numbered lines. */
export function layOutTasks({ lead, lines }: Asked, widthMm: number, at: DrawingPoint = [0, 0]): Block {
  const head = layOutParagraph("lead", lead, widthMm, at, "strong");
  const down = head.heightMm + PARAGRAPH_MM;
  const body = layOutLines(lines, widthMm, [at[0], at[1] - down]);
  return { list: [...head.list, ...body.list], heightMm: down + body.heightMm };
}

/** Numbered lines in columns, from an upper left corner down. */
function layOutLines(lines: readonly string[], widthMm: number, [left, top]: DrawingPoint): Block {
  const longest = Math.max(0, ...lines.map((text) => letteredWidthMm(text, NOTE_MM, "plain"))) + NUMBER_MM;
  const least = Math.min(COLUMN_MM, longest);
  const columns = Math.max(1, Math.min(Math.floor((widthMm + GUTTER_MM) / (least + GUTTER_MM)), lines.length));
  const columnMm = (widthMm - (columns - 1) * GUTTER_MM) / columns;
  const cells = lines.map((text) => breakLines(text, { widthMm: columnMm - NUMBER_MM, heightMm: NOTE_MM }));
  const list: DisplayItem[] = [];
  let deepest = 0;
  for (const [column, group] of shareOut(cells, columns).entries()) {
    const x = left + column * (columnMm + GUTTER_MM);
    let row = 0;
    for (const { number, text } of group) {
      list.push(letter(`sheet.task.${number}.number`, [x, rowFoot(row)], `${number}.`));
      for (const [i, line] of text.entries()) {
        list.push(letter(`sheet.task.${number}.${i + 1}`, [x + NUMBER_MM, rowFoot(row)], line));
        row += 1;
      }
    }
    deepest = Math.max(deepest, row);
  }
  return { list, heightMm: deepest === 0 ? 0 : top - rowFoot(deepest - 1) + NOTE_MM * HANG };

  function rowFoot(row: number): number {
    return top - NOTE_MM - row * STEP_MM;
  }
}

/** How far letters reach under their line, in heights of capitals. */
const HANG = 0.4;

type Cell = { readonly number: number; readonly text: readonly string[] };

/** Cells down one column and then the next, the columns as even as whole cells allow. */
function shareOut(cells: readonly (readonly string[])[], columns: number): readonly (readonly Cell[])[] {
  const rows = cells.reduce((sum, cell) => sum + cell.length, 0);
  const shared: Cell[][] = Array.from({ length: columns }, () => []);
  let passed = 0;
  cells.forEach((text, i) => {
    const column = Math.min(columns - 1, Math.floor((passed / rows) * columns + EVEN));
    shared[column]?.push({ number: i + 1, text });
    passed += text.length;
  });
  return shared;
}

/** Rounding must not push the first cell of a column into the one before. */
const EVEN = 1e-9;

function letter(id: string, at: DrawingPoint, text: string): DisplayItem {
  return makeLettering(id, at, text, { anchor: "start", heightMm: NOTE_MM, face: "plain" });
}
