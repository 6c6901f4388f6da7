import type { Stage } from "../../stage/stage";
import { arrowHead } from "../arrow-head";
import type { DisplayItem, DrawingPoint } from "../display-list";
import { LETTER_MM, makeLettering, makeStroke } from "../make-stroke";

/** How far beside the stage the rake is noted, millimetres of paper. */
const RAKE_ASIDE_MM = 5;

/** A rake, beside the stage at stage left, where no scenery stands: the way up, and the ratio it rises at. */
export function drawRake({ rake, depth }: Stage, half: number, mm: number): DisplayItem[] {
  if (rake === 0) return [];
  const x = half + RAKE_ASIDE_MM * mm;
  const [tail, tip]: [DrawingPoint, DrawingPoint] =
    rake > 0
      ? [
          [x, depth * 0.4],
          [x, depth * 0.6],
        ]
      : [
          [x, depth * 0.6],
          [x, depth * 0.4],
        ];
  return [
    makeStroke("plan.stage.rake.arrow", [tail, tip]),
    makeStroke("plan.stage.rake.head", arrowHead(tail, tip, 2.4 * mm)),
    makeLettering("plan.stage.rake.up", tail, "UP", {
      heightMm: LETTER_MM.figure,
      shiftMm: [0, rake > 0 ? -LETTER_MM.figure - 1 : 1],
    }),
    makeLettering("plan.stage.rake.ratio", [x, depth / 2], `RAKE ${printRake(rake)}`, {
      heightMm: LETTER_MM.figure,
      anchor: "start",
      shiftMm: [1.6, -LETTER_MM.figure / 2],
    }),
  ];
}

/** A rake as it is said: 1 IN 20, to a tenth where it is not whole. */
function printRake(rake: number): string {
  return `1 IN ${Math.round(10 / Math.abs(rake)) / 10}`;
}
