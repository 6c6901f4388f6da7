import type { LengthUnits } from "../../measure/length";
import { printLength } from "../../measure/print-length";
import { centreVanishingPoint } from "../../perspective/vanishing-point";
import type { Stage } from "../../stage/stage";
import type { Viewer } from "../../stage/viewer";
import { circlePoints } from "../arc-points";
import type { DisplayItem } from "../display-list";
import { LETTER_MM, makeLettering, makeStroke } from "../make-stroke";

/** Radius of the CVP's circle and reach of its cross, millimetres of paper. */
const CVP_RADIUS_MM = 1.1;
const CVP_CROSS_MM = 2;

/**
 * The horizon across the opening, lettered with the height of the eye over the stage floor, and the centre vanishing point on
 * it: a small circle with a cross. Picture metres.
 */
export function drawHorizon(
  stage: Stage,
  viewer: Viewer,
  units: LengthUnits,
  scaleRatio: number,
): readonly DisplayItem[] {
  const half = stage.opening.width / 2;
  const [X, Z] = centreVanishingPoint(viewer);
  const mm = scaleRatio / 1000;
  const arm = CVP_CROSS_MM * mm;
  const heightMm = LETTER_MM.note;
  return [
    makeStroke(
      "picture.horizon",
      [
        [-half, Z],
        [half, Z],
      ],
      { line: "centre", faint: true },
    ),
    makeLettering("picture.horizon.name", [-half, Z], `HORIZON ${printLength(viewer.eyeHeight, units)}`, {
      heightMm,
      anchor: "start",
      shiftMm: [2, 1],
    }),
    makeStroke("picture.cvp", circlePoints([X, Z], CVP_RADIUS_MM * mm), { closed: true }),
    makeStroke("picture.cvp.across", [
      [X - arm, Z],
      [X + arm, Z],
    ]),
    makeStroke("picture.cvp.up", [
      [X, Z - arm],
      [X, Z + arm],
    ]),
    makeLettering("picture.cvp.name", [X, Z], "CVP", { heightMm, anchor: "start", shiftMm: [2.2, 1.4] }),
  ];
}
