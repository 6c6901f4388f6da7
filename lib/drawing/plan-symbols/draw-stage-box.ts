import type { Stage } from "../../stage/stage";
import type { DisplayItem, DrawingPoint } from "../display-list";
import { makeStroke } from "../make-stroke";
import { drawRake } from "./draw-rake";
import { drawStub, STUB_M } from "./draw-stub";

/**
 * The stage in plan, metres: the floor's sides and back (faint), the apron's edge, the proscenium wall cut either side of
 * the opening (downstage of the plaster line, which is its upstage face here), and the rake. `scaleRatio` ties the paper's
 * millimetres to metres.
 */
export function drawStageBox(stage: Stage, scaleRatio: number): readonly DisplayItem[] {
  const half = stage.opening.width / 2;
  const mm = scaleRatio / 1000;
  return [
    makeStroke("plan.stage.floor", floorOutline(stage, half), { faint: true }),
    ...(stage.apron > 0 ? [makeStroke("plan.stage.apron", apronOutline(stage, half), { weight: "thick" })] : []),
    ...drawStub("left", [-half, -half - STUB_M], mm),
    ...drawStub("right", [half, half + STUB_M], mm),
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
