import type { Lettering } from "@/lib/drawing/display-list";
import { CAP_SHARE, letteringBox } from "@/lib/drawing/lettering-box";
import { type LivePaper, paintInPaper, paperPoint } from "./live-paper";

const ALIGN = { start: "left", middle: "center", end: "right" } as const;
/** Space between letters, of their size; the paper round them, millimetres. As the sheet's style has them. */
const SPACED = 0.04;
const ROUND_MM = 0.7;

/** Paints a lettering as the sheet letters it, in its face and with paper round it. */
export function paintLettering(paper: LivePaper, lettering: Lettering): void {
  const { context, pens } = paper;
  const k = paintInPaper(paper);
  const [x, y] = paperPoint(paper, lettering.at);
  const [right, up] = lettering.shiftMm;
  const size = lettering.heightMm / CAP_SHARE;
  const colour =
    lettering.pencil === "graphite" ? (lettering.faint ? pens.soft : pens.graphite) : pens[lettering.pencil];
  context.setLineDash([]);
  if (lettering.boxed) {
    const { left, top, right: end, bottom } = letteringBox(lettering);
    context.fillStyle = pens.paper;
    context.fillRect(x + left, y - top, end - left, top - bottom);
    context.strokeStyle = colour;
    context.lineWidth = pens.thinPx / k;
    context.strokeRect(x + left, y - top, end - left, top - bottom);
  }
  context.font = `${size}px ${pens.hand}`;
  if ("letterSpacing" in context) context.letterSpacing = `${SPACED * size}px`;
  context.textAlign = ALIGN[lettering.anchor];
  context.strokeStyle = pens.paper;
  context.lineWidth = ROUND_MM;
  context.strokeText(lettering.text, x + right, y - up);
  context.fillStyle = colour;
  context.fillText(lettering.text, x + right, y - up);
}
