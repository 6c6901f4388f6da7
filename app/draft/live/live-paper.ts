import { pxPerMm, type View } from "@/app/_sheet/view";
import type { DrawingPoint } from "@/lib/drawing/display-list";
import type { HandPaths } from "./hand-paths";
import type { Pens } from "./pens";

/** A canvas that is painted on as a pane's drawing is drawn: the same places, the same pencils. */
export type LivePaper = {
  readonly context: CanvasRenderingContext2D;
  readonly pens: Pens;
  readonly view: View;
  readonly scaleRatio: number;
  /** Pixels of the screen to one of the page. */
  readonly density: number;
  /** Pixels of a millimetre of paper when the drawing is shown whole: line weights go by it. */
  readonly wholeMm: number;
  readonly handPaths: HandPaths;
};

/** Metres of the drawing to millimetres of its paper, y down. */
export function paperPoint({ scaleRatio }: LivePaper, [x, y]: DrawingPoint): readonly [x: number, y: number] {
  return [(x * 1000) / scaleRatio, (-y * 1000) / scaleRatio];
}

/** From here on the canvas is painted on in millimetres of paper; returns pixels of the page to one of them. */
export function paintInPaper({ context, view, scaleRatio, density }: LivePaper): number {
  const k = pxPerMm(view, scaleRatio);
  context.setTransform(density * k, 0, 0, density * k, density * view.origin[0], density * view.origin[1]);
  return k;
}

/** From here on the canvas is painted on in pixels about a place of the drawing, as marks are. */
export function paintInPixels({ context, view, density, pens }: LivePaper, [x, y]: DrawingPoint): void {
  const [left, top] = [view.origin[0] + x * view.pxPerMetre, view.origin[1] - y * view.pxPerMetre];
  const scale = density * pens.marks;
  context.setTransform(scale, 0, 0, scale, density * left, density * top);
}
