import { FOOT_M, type LengthUnits } from "../../measure/length";
import { toPaperMm } from "../../measure/scale";
import type { DisplayItem, DisplayList, DrawingPoint } from "../display-list";
import { LETTER_MM, makeLettering, makeStroke } from "../make-stroke";

/** Parts a bar may have, in feet or metres. */
const PARTS: Readonly<Record<LengthUnits, readonly number[]>> = {
  "ft-in": [0.5, 1, 2, 5, 10, 20, 50, 100],
  m: [0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50],
};
/** The whole bar is no longer than this, millimetres; its height; how thick the edges of its white parts are; how many parts. */
const MOST_MM = 51;
const HIGH_MM = 1.8;
const EDGE_MM = 0.25;
const COUNT = 4;

/**
 * A graduated bar true at a drawing's scale, in millimetres of paper from its lower left corner `at`, the parts black and white
 * in turn, lettered with what they are on the stage. It is made of ink alone: a pen along its ends would make it longer.
 */
export function scaleBar(units: LengthUnits, scaleRatio: number, [x, y]: DrawingPoint): DisplayList {
  const metres = units === "m" ? 1 : FOOT_M;
  const long = (part: number) => toPaperMm(part * metres, scaleRatio);
  const part = PARTS[units].findLast((each) => long(each) * COUNT <= MOST_MM) ?? (PARTS[units][0] as number);
  const edge = (i: number) => x + i * long(part);
  const [end, head] = [edge(COUNT), y + HIGH_MM];
  const items: DisplayItem[] = [
    ink("bar.foot", [x, y], [end, y + EDGE_MM]),
    ink("bar.head", [x, head - EDGE_MM], [end, head]),
    ink("bar.end", [end - EDGE_MM, y], [end, head]),
  ];
  for (let i = 0; i < COUNT; i += 2) items.push(ink(`bar.${i}`, [edge(i), y], [edge(i + 1), head]));
  for (const i of [0, 1, 2, COUNT])
    items.push(
      makeLettering(`bar.${i}.figure`, [edge(i), head + 1], figure(part * i, units, i === COUNT), {
        heightMm: LETTER_MM.small,
      }),
    );
  return items;
}

/** A box of ink from its lower left to its upper right corner. */
function ink(id: string, [left, bottom]: DrawingPoint, [right, top]: DrawingPoint): DisplayItem {
  const box: readonly DrawingPoint[] = [
    [left, bottom],
    [right, bottom],
    [right, top],
    [left, top],
  ];
  return makeStroke(id, box, { closed: true, fill: "ink", fillOnly: true });
}

function figure(value: number, units: LengthUnits, last: boolean): string {
  const rounded = Math.round(value * 100) / 100;
  if (units === "ft-in" && rounded % 1 !== 0) return rounded < 1 ? '6"' : `${Math.floor(rounded)}'-6"`;
  if (units === "ft-in") return rounded === 0 ? "0" : `${rounded}'`;
  return last ? `${rounded} m` : String(rounded);
}
