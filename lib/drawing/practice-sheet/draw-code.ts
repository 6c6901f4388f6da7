import qrcode from "qrcode";
import { type SheetBox, sheetBox } from "../../sheet/sheet-box";
import type { DisplayList, Stroke } from "../display-list";
import { filledBox } from "./draw-markers";

/** Clear modules round a code, which readers look for (ISO/IEC 18004 asks for four). */
const QUIET_MODULES = 4;
/** Side of a module: eight pixels of a 12 megapixel photograph of an A4 sheet; of a long code smaller, but a printer's and a camera's match. */
const MODULE_MM = { usual: 0.6, least: 0.5 } as const;
/** A code of more modules than this is drawn with the least ones. */
const MANY_MODULES = 41;

/** How wide a text's code is on paper with the white round it, millimetres. */
export function codeSize(text: string): number {
  const { size } = codeOf(text);
  return (size + 2 * QUIET_MODULES) * moduleSize(size);
}

/** A text as a QR code in a box of `codeSize`, in millimetres of paper right and up from the sheet's upper left corner. */
export function drawCode(text: string, { left, top }: SheetBox): DisplayList {
  const modules = codeOf(text);
  const { size } = modules;
  const side = moduleSize(size);
  const isDark = (row: number, column: number) => column < size && modules.get(row, column) !== 0;
  const squares: Stroke[] = [];
  for (let row = 0; row < size; row++) {
    for (let from = 0; from < size; from++) {
      let to = from;
      while (isDark(row, to)) to += 1;
      if (to === from) continue;
      const [x, y] = [left + (QUIET_MODULES + from) * side, top + (QUIET_MODULES + row) * side];
      squares.push(filledBox(`code.${row}.${from}`, sheetBox(x, y, (to - from) * side, side), "ink"));
      from = to;
    }
  }
  return squares;
}

/** Level M mends a seventh of the code: a thumb's edge or a coffee stain. */
function codeOf(text: string) {
  return qrcode.create(text, { errorCorrectionLevel: "M" }).modules;
}

function moduleSize(modules: number): number {
  return modules > MANY_MODULES ? MODULE_MM.least : MODULE_MM.usual;
}
