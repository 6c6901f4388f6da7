import type { StagePoint } from "../../stage/frame";
import { backWallCorners, floorHeight, type Stage } from "../../stage/stage";
import type { Viewer } from "../../stage/viewer";
import type { DisplayItem } from "../display-list";
import { makeStroke, type StrokeStyle } from "../make-stroke";
import { see } from "./see";

/**
 * The empty stage seen through the opening: the toned floor, the back wall, and the four lines from the opening's corners to
 * it (sides of the floor, and of the ceiling level with the opening's top), all faint; the floor's centre line; and the
 * apron, which runs forward of the plaster line along the same rays. Picture metres. What lies behind the eye is left out.
 */
export function drawStageShell(stage: Stage, viewer: Viewer): readonly DisplayItem[] {
  const half = stage.opening.width / 2;
  const { height } = stage.opening;
  const [footLeft, footRight, topLeft, topRight] = backWallCorners(stage);
  const line = (name: string, points: readonly StagePoint[], style: StrokeStyle): DisplayItem[] => {
    const seen = see(viewer, points);
    return seen ? [makeStroke(`picture.stage.${name}`, seen, style)] : [];
  };
  const faint = { faint: true } as const;
  const nearLeft: StagePoint = [-half, 0, 0];
  const nearRight: StagePoint = [half, 0, 0];
  const backFoot: StagePoint = [0, stage.depth, floorHeight(stage, stage.depth)];
  return [
    ...line("floor", [nearLeft, footLeft, footRight, nearRight], { closed: true, fill: "floor", fillOnly: true }),
    ...line("side.left", [nearLeft, footLeft], faint),
    ...line("side.right", [nearRight, footRight], faint),
    ...line("ceiling.left", [[-half, 0, height], topLeft], faint),
    ...line("ceiling.right", [[half, 0, height], topRight], faint),
    ...line("back-wall", [footLeft, topLeft, topRight, footRight], { ...faint, closed: true }),
    // Straight before the eye it would run along the sheet's own centre line, dash over gap.
    ...(viewer.offset === 0 ? [] : line("floor.centre-line", [[0, 0, 0], backFoot], { ...faint, line: "centre" })),
    ...drawApron(),
  ];

  function drawApron(): DisplayItem[] {
    if (!(stage.apron > 0)) return [];
    const [left, right]: [StagePoint, StagePoint] = [
      [-half, -stage.apron, 0],
      [half, -stage.apron, 0],
    ];
    return [
      ...line("apron.left", [nearLeft, left], faint),
      ...line("apron.right", [nearRight, right], faint),
      ...line("apron", [left, right], { weight: "thick" }),
    ];
  }
}
