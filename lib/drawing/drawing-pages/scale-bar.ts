import { FOOT_M, type LengthUnits } from "../../measure/length";
import { toPaperMm } from "../../measure/scale";
import type { DisplayItem, DisplayList, DrawingPoint } from "../display-list";
import { LETTER_MM, makeLettering, makeStroke } from "../make-stroke";

/** Parts a bar may have, in feet or metres. */
const PARTS: Readonly<Record<LengthUnits, readonly number[]>> = {
  "ft-in": [0.5, 1, 2, 5, 10, 20, 50, 100],
  m: [0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50],
};
/** The whole bar is no longer than this, millimetres; its height; how many parts it has. */
const MOST_MM = 51;
const HIGH_MM = 1.8;
const COUNT = 4;

/**
 * A graduated bar true at a drawing's scale, in millimetres of paper from its lower left corner `at`, the parts black and white
 * in turn, lettered with what they are on the stage.
 */
export function scaleBar(units: LengthUnits, scaleRatio: number, [x, y]: DrawingPoint): DisplayList {
  const metres = units === "m" ? 1 : FOOT_M;
  const long = (part: number) => toPaperMm(part * metres, scaleRatio);
  const part = PARTS[units].findLast((each) => long(each) * COUNT <= MOST_MM) ?? (PARTS[units][0] as number);
  const items: DisplayItem[] = [];
  for (let i = 0; i < COUNT; i++) {
    const [left, right] = [x + i * long(part), x + (i + 1) * long(part)];
    const box: readonly DrawingPoint[] = [
      [left, y],
      [right, y],
      [right, y + HIGH_MM],
      [left, y + HIGH_MM],
    ];
    if (i % 2 === 0) items.push(makeStroke(`bar.${i}.fill`, box, { closed: true, fill: "ink", fillOnly: true }));
    items.push(makeStroke(`bar.${i}`, box, { closed: true }));
  }
  for (const i of [0, 1, 2, COUNT])
    items.push(
      makeLettering(`bar.${i}.figure`, [x + i * long(part), y + HIGH_MM + 1], figure(part * i, units, i === COUNT), {
        heightMm: LETTER_MM.small,
      }),
    );
  return items;
}

function figure(value: number, units: LengthUnits, last: boolean): string {
  const rounded = Math.round(value * 100) / 100;
  if (units === "ft-in" && rounded % 1 !== 0) return rounded < 1 ? '6"' : `${Math.floor(rounded)}'-6"`;
  if (units === "ft-in") return rounded === 0 ? "0" : `${rounded}'`;
  return last ? `${rounded} m` : String(rounded);
}
