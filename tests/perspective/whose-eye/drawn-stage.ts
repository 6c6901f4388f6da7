import { project } from "@/lib/perspective/project";
import type {
  DrawingLine,
  DrawingPlace,
  FloorRectangle,
  MarkedDrawing,
} from "@/lib/perspective/whose-eye/marked-drawing";
import type { StagePoint } from "@/lib/stage/frame";
import type { Viewer } from "@/lib/stage/viewer";

/** A stage point as a viewer sees it, drawn at a scale: millimetres of paper from the foot of the centre line. */
function drawPoint(viewer: Viewer, point: StagePoint, scaleRatio: number): DrawingPlace {
  const seen = project(viewer, point);
  if (!seen.seen) throw new Error("The point is not seen.");
  return [(seen.at[0] * 1000) / scaleRatio, (seen.at[1] * 1000) / scaleRatio];
}

export function drawLine(viewer: Viewer, a: StagePoint, b: StagePoint, scaleRatio: number): DrawingLine {
  return [drawPoint(viewer, a, scaleRatio), drawPoint(viewer, b, scaleRatio)];
}

/** A rectangle of the floor from its first corner on: turned so far counter-clockwise, its first side along that way. Radians. */
export function floorCorners(
  [x, y]: readonly [number, number],
  turn: number,
  first: number,
  second: number,
): readonly [StagePoint, StagePoint, StagePoint, StagePoint] {
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  const at = (u: number, v: number): StagePoint => [x + u * c - v * s, y + u * s + v * c, 0];
  return [at(0, 0), at(first, 0), at(first, second), at(0, second)];
}

export function drawRectangle(
  viewer: Viewer,
  [a, b, c, d]: readonly [StagePoint, StagePoint, StagePoint, StagePoint],
  scaleRatio: number,
  proportion: number | null,
): FloorRectangle {
  const at = (point: StagePoint) => drawPoint(viewer, point, scaleRatio);
  return { corners: [at(a), at(b), at(c), at(d)], proportion };
}

/** A drawing with nothing marked in it but what is said; a fine pencil's tenth of a millimetre at each place. */
export function drawing(marked: Partial<MarkedDrawing>): MarkedDrawing {
  return { parallels: [], uprights: [], rectangle: null, length: null, sigmaMm: 0.1, ...marked };
}
