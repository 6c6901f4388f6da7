import type { Stage } from "../../stage/stage";
import type { DisplayItem, DrawingPoint } from "../display-list";
import { LETTER_MM, makeLettering, makeStroke } from "../make-stroke";
import { drawRake } from "./draw-rake";
import { drawStub, STUB_M, STUB_THICKNESS_M } from "./draw-stub";

/** How far the centre line runs past the stage, and the plaster line past the stubs, millimetres of paper. */
const PAST_MM = 6;

/**
 * The stage in plan, metres: the floor's sides and back (faint), the apron's edge, the proscenium wall cut either side of
 * the opening (downstage of the plaster line, which is its upstage face here), the plaster line and the centre line.
 * `scaleRatio` ties the paper's millimetres to metres.
 */
export function drawStageBox(stage: Stage, scaleRatio: number): readonly DisplayItem[] {
  const half = stage.opening.width / 2;
  const mm = scaleRatio / 1000;
  const end = half + STUB_M + PAST_MM * mm;
  const below = -Math.max(stage.apron, STUB_THICKNESS_M) - PAST_MM * mm;
  const above = stage.depth + PAST_MM * mm;
  return [
    makeStroke("plan.stage.floor", floorOutline(stage, half), { faint: true }),
    ...(stage.apron > 0 ? [makeStroke("plan.stage.apron", apronOutline(stage, half), { weight: "thick" })] : []),
    ...drawStub("left", [-half, -half - STUB_M], mm),
    ...drawStub("right", [half, half + STUB_M], mm),
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
    ...drawRake(stage, half, mm),
  ];
}

function floorOutline({ depth }: Stage, half: number): DrawingPoint[] {
  return [
    [-half, 0],
    [-half, depth],
    [half, depth],
    [half, 0],
  ];
}

function apronOutline({ apron }: Stage, half: number): DrawingPoint[] {
  return [
    [-half, 0],
    [-half, -apron],
    [half, -apron],
    [half, 0],
  ];
}

/** The drafter's sign for a centre line: a C crossed by an L. */
function letterCentreLine(at: DrawingPoint, heightMm: number): DisplayItem[] {
  return [
    makeLettering("plan.stage.centre-line.c", at, "C", { heightMm, shiftMm: [-0.7, -heightMm - 0.8] }),
    makeLettering("plan.stage.centre-line.l", at, "L", { heightMm, shiftMm: [0.7, -heightMm - 1.8] }),
  ];
}
