import type { Handle } from "@/lib/draft/reshape/handle";
import type { DrawingPoint } from "@/lib/drawing/display-list";
import { GRIP_SHAPES } from "../grips/grip-shapes";
import { type LivePaper, paintInPaper, paintInPixels, paperPoint } from "./live-paper";

type Pen = { readonly colour: string; readonly widthPx: number };

/** The pencil's mark as the sheet draws it: a graphite ring with hairs, open in the middle where the point is. */
export function paintOwnMark(paper: LivePaper, at: DrawingPoint): void {
  const { context, pens } = paper;
  const ring = new Path2D();
  ring.arc(0, 0, 9, 0, 2 * Math.PI);
  paintInPixels(paper, at);
  strokePath(paper, ring, { colour: pens.paper, widthPx: 5 });
  strokePath(paper, ring, { colour: pens.graphite, widthPx: 2 });
  strokePath(paper, new Path2D("M-16 0H-4M4 0H16M0 -16V-4M0 4V16"), { colour: pens.graphite, widthPx: 1.5 });
  context.beginPath();
  context.arc(0, 0, 1.1, 0, 2 * Math.PI);
  context.fillStyle = pens.graphite;
  context.fill();
}

/** What has caught the pencil: a small blue square. */
export function paintCaughtMark(paper: LivePaper, at: DrawingPoint): void {
  const { context, pens } = paper;
  paintInPixels(paper, at);
  context.fillStyle = pens.blue;
  context.globalAlpha = 0.2;
  context.fillRect(-6, -6, 12, 12);
  context.globalAlpha = 1;
  strokePath(paper, new Path2D("M-6 -6H6V6H-6Z"), { colour: pens.blue, widthPx: 2 });
}

/** The back wall's foot in blue, with its grip. */
export function paintBackWall(paper: LivePaper, from: DrawingPoint, to: DrawingPoint, grip: DrawingPoint): void {
  const { context, pens } = paper;
  const k = paintInPaper(paper);
  const [a, b] = [paperPoint(paper, from), paperPoint(paper, to)];
  context.setLineDash([]);
  context.beginPath();
  context.moveTo(a[0], a[1]);
  context.lineTo(b[0], b[1]);
  context.strokeStyle = pens.blue;
  context.lineWidth = (1.2 * pens.thinPx) / k;
  context.stroke();
  paintInPixels(paper, grip);
  const arrows = new Path2D("M0 -11V11M-5 -6L0 -11L5 -6M-5 6L0 11L5 6");
  context.lineCap = "round";
  strokePath(paper, arrows, { colour: pens.paper, widthPx: 6 });
  strokePath(paper, arrows, { colour: pens.blue, widthPx: 2 });
}

/** A handle of what is chosen as the sheet draws it; the one that is held has a ring round it. */
export function paintGrip(paper: LivePaper, { kind, at }: Pick<Handle, "kind" | "at">, isHeld: boolean): void {
  const { context, pens } = paper;
  paintInPixels(paper, at);
  context.lineJoin = "round";
  const ring = new Path2D();
  ring.arc(0, 0, 13, 0, 2 * Math.PI);
  if (isHeld) {
    context.fillStyle = pens.blue;
    context.globalAlpha = 0.16;
    context.fill(ring);
    context.globalAlpha = 1;
    strokePath(paper, ring, { colour: pens.blue, widthPx: 2 });
  }
  const shape = new Path2D(GRIP_SHAPES[kind]);
  context.fillStyle = pens.paper;
  context.fill(shape);
  context.lineCap = "round";
  strokePath(paper, shape, { colour: pens.paper, widthPx: 5 });
  strokePath(paper, shape, { colour: pens.blue, widthPx: 2 });
}

function strokePath({ context }: LivePaper, path: Path2D, { colour, widthPx }: Pen): void {
  context.setLineDash([]);
  context.strokeStyle = colour;
  context.lineWidth = widthPx;
  context.stroke(path);
}
