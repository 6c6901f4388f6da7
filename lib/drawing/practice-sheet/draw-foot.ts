import type { Exercise } from "../../exercise/exercise";
import { printScale } from "../../measure/scale";
import type { SheetBox } from "../../sheet/sheet-box";
import type { DisplayList } from "../display-list";
import { makeLettering } from "../make-stroke";
import { layOutText } from "../paper/lay-out-text";

const SCALE_MM = 3.2;
const SHEET_MM = 2;
const CAUTION_MM = 1.8;

const CAUTION = "A teaching sketch is not a construction drawing: local codes and licensed practice decide.";

/** The scale and the sheet's own name, in a box at the foot; millimetres right and up from the sheet's upper left corner. */
export function drawScaleAndSheet(
  { id, version, scale }: Pick<Exercise, "id" | "version" | "scale">,
  copy: number | null,
  { left, top, bottom }: SheetBox,
): DisplayList {
  const sheet = `${id}, version ${version}${copy === null ? "" : `, sheet ${copy}`}`;
  const style = { anchor: "start", face: "plain", heightMm: SHEET_MM } as const;
  return [
    makeLettering("sheet.scale", [left, -top - SCALE_MM - 1.5], `SCALE ${printScale(scale)}`, {
      anchor: "start",
      heightMm: SCALE_MM,
    }),
    makeLettering("sheet.id", [left, -bottom + 1], sheet, style),
  ];
}

/** The caution, in a box at the foot. */
export function drawCaution({ left, right, bottom, top }: SheetBox): DisplayList {
  const at = [left, -(top + bottom) / 2 + CAUTION_MM * 1.5] as const;
  return layOutText("sheet.caution", CAUTION, { at, widthMm: right - left, heightMm: CAUTION_MM }).list;
}
