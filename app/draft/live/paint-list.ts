import type { DisplayList, LineType, LineWeight, Stroke, Tone } from "@/lib/drawing/display-list";
import { type LivePaper, paintInPaper, paperPoint } from "./live-paper";
import { paintLettering } from "./paint-lettering";
import type { Pens } from "./pens";

/** `drawn` as the sheet draws it; `lit` a broad soft stroke under what is chosen; `quick` ruled, thin and light, for what will be drawn in a moment. */
export type Manner = "drawn" | "lit" | "quick";

/** Line weights, dashes and the broad stroke as the sheet's style has them: millimetres of paper, and times a thin line's least width. */
const WEIGHTS: Readonly<Record<LineWeight, { readonly mm: number; readonly times: number }>> = {
  thin: { mm: 0.25, times: 1 },
  thick: { mm: 0.5, times: 2 },
  "extra-thick": { mm: 0.75, times: 2.6 },
};
const DASHES: Readonly<Record<LineType, readonly number[]>> = {
  solid: [],
  centre: [9, 1.5, 2, 1.5],
  plaster: [7, 2],
  hidden: [2, 1.2],
};
const LIT = { mm: 2.2, leastPx: 11 } as const;

/** Of a thin line's width: a little less than a pixel is painted as a hairline is. */
const THINNEST = 0.98;

type Line = { readonly colour: string; readonly widthPx: number; readonly dashPx: readonly number[] };

/** Paints a display list, in order. Ruled lines of one kind that follow each other are painted in one go. */
export function paintList(paper: LivePaper, list: DisplayList, manner: Manner = "drawn"): void {
  if (manner === "quick") {
    paintQuick(paper, list);
    return;
  }
  const { context, pens, handPaths } = paper;
  const k = paintInPaper(paper);
  const m = Math.max(1, paper.wholeMm);
  context.lineJoin = "round";
  let open = null as { readonly key: string; readonly line: Line } | null;
  const flush = () => {
    if (open) strokeAs(open.line);
    open = null;
  };
  for (const item of list) {
    if (item.kind === "lettering") {
      flush();
      if (manner === "drawn") paintLettering(paper, item);
      continue;
    }
    const line = lineOf(item, manner, pens, m);
    const points = item.points.map((point) => paperPoint(paper, point));
    if (item.fill !== "none" && manner === "drawn") {
      flush();
      context.beginPath();
      trace(points, item.closed);
      context.fillStyle = toneOf(item.fill, pens);
      context.fill();
    }
    if (item.fillOnly) continue;
    if (item.hand && manner === "drawn") {
      flush();
      const { path, by } = handPaths(item, points);
      context.translate(by[0], by[1]);
      strokeAs(line, path);
      context.translate(-by[0], -by[1]);
      continue;
    }
    const key = `${line.colour} ${line.widthPx} ${line.dashPx}`;
    if (open?.key !== key) {
      flush();
      context.beginPath();
      open = { key, line };
    }
    trace(points, item.closed);
  }
  flush();

  function trace(points: readonly (readonly [number, number])[], closed: boolean): void {
    points.forEach(([x, y], i) => {
      if (i === 0) context.moveTo(x, y);
      else context.lineTo(x, y);
    });
    if (closed) context.closePath();
  }
  function strokeAs({ colour, widthPx, dashPx }: Line, path?: Path2D): void {
    context.strokeStyle = colour;
    context.lineWidth = widthPx / k;
    context.lineCap = dashPx.length > 0 ? "butt" : "round";
    context.setLineDash(dashPx.map((px) => px / k));
    if (path) context.stroke(path);
    else context.stroke();
  }
}

/** All lines in one go, each no wider than the thinnest that a screen has, which is painted at once however many there are. */
function paintQuick({ context, pens, view, density }: LivePaper, list: DisplayList): void {
  const [left, top] = view.origin;
  const k = view.pxPerMetre;
  context.setTransform(density, 0, 0, density, 0, 0);
  context.setLineDash([]);
  context.lineCap = "butt";
  context.lineJoin = "bevel";
  context.strokeStyle = pens.soft;
  context.lineWidth = pens.thinPx * THINNEST;
  context.beginPath();
  for (const item of list) {
    if (item.kind === "lettering" || item.fillOnly) continue;
    let begun = false;
    for (const [x, y] of item.points) {
      if (begun) context.lineTo(left + x * k, top - y * k);
      else context.moveTo(left + x * k, top - y * k);
      begun = true;
    }
    if (item.closed) context.closePath();
  }
  context.stroke();
}

function lineOf(stroke: Stroke, manner: Exclude<Manner, "quick">, pens: Pens, m: number): Line {
  if (manner === "lit") return { colour: pens.lit, widthPx: Math.max(LIT.leastPx, LIT.mm * m), dashPx: [] };
  const { mm, times } = WEIGHTS[stroke.weight];
  const colour = stroke.pencil === "graphite" ? (stroke.faint ? pens.faint : pens.graphite) : pens[stroke.pencil];
  return {
    colour,
    widthPx: Math.max(times * pens.thinPx, mm * m),
    dashPx: DASHES[stroke.line].map((part) => part * m),
  };
}

function toneOf(tone: Exclude<Tone, "none">, pens: Pens): string {
  return tone === "ink" ? pens.graphite : pens[tone];
}
