import type { Stage } from "../../stage/stage";
import type { DisplayItem, DrawingPoint } from "../display-list";
import { LETTER_MM, makeLettering, makeStroke } from "../make-stroke";
import { STUB_M, STUB_THICKNESS_M } from "./draw-stub";

/** How far the centre line runs past the stage, and the plaster line past the stubs, millimetres of paper. */
const PAST_MM = 6;

/**
 * The two lines that everything on the stage is measured from, metres of the plan: the plaster line (long dashes) and the
 * centre line (long and short), each with its name. They run on across platforms and furniture, so draw them after those
 * (common practice, no source). `scaleRatio` ties the paper's millimetres to metres.
 */
export function drawDatumLines(
  stage: Pick<Stage, "opening" | "apron" | "depth">,
  scaleRatio: number,
): readonly DisplayItem[] {
  const half = stage.opening.width / 2;
  const mm = scaleRatio / 1000;
  const end = half + STUB_M + PAST_MM * mm;
  const below = -Math.max(stage.apron, STUB_THICKNESS_M) - PAST_MM * mm;
  const above = stage.depth + PAST_MM * mm;
  return [
    makeStroke(
      "plan.stage.plaster-line",
      [
        [-end, 0],
        [end, 0],
      ],
      { line: "plaster", weight: "thick" },
    ),
    makeStroke(
      "plan.stage.centre-line",
      [
        [0, below],
        [0, above],
      ],
      { line: "centre" },
    ),
    makeLettering("plan.stage.plaster-line.name", [half, -STUB_THICKNESS_M], "PLASTER LINE", {
      heightMm: LETTER_MM.figure,
      anchor: "start",
      shiftMm: [0.8, -LETTER_MM.figure - 1.6],
    }),
    ...letterCentreLine([0, below], LETTER_MM.name),
  ];
}

/** The drafter's sign for a centre line: a C crossed by an L. */
function letterCentreLine(at: DrawingPoint, heightMm: number): DisplayItem[] {
  return [
    makeLettering("plan.stage.centre-line.c", at, "C", { heightMm, shiftMm: [-0.7, -heightMm - 0.8] }),
    makeLettering("plan.stage.centre-line.l", at, "L", { heightMm, shiftMm: [0.7, -heightMm - 1.8] }),
  ];
}
