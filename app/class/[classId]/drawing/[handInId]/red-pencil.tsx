"use client";

import { type PointerEvent, useRef, useState } from "react";
import { toPaper } from "@/app/_sheet/view";
import type { RedLine } from "@/lib/classroom/gradebook/remarks";

/** A hand's trembling below this makes no new place of a line, millimetres of paper. */
const LEAST_STEP_MM = 0.35;
/** As many places as one line may have; a longer one ends here. */
const MOST_PLACES = 1500;
/** A ring about a mark, millimetres of paper. */
const RING_MM = 5;
const RING_PLACES = 24;
/** Kept to a tenth of a millimetre on the stage. */
const KEPT = 1e4;

type Place = readonly [number, number];

/** The line under way, and what the sheet listens to. A line is given away, in metres of the drawing, when the pencil lifts. */
export function useRedPencil(scaleRatio: number, onLine: (line: RedLine) => void) {
  const [drawing, setDrawing] = useState<RedLine | null>(null);
  const line = useRef<Place[]>([]);
  const pointer = useRef<number | null>(null);

  const begin = (event: PointerEvent<SVGSVGElement>) => {
    // A second finger moves the sheet, also after the first one's line was let go.
    if (event.button !== 0 || !event.isPrimary || pointer.current !== null) return;
    const at = placeOf(event, scaleRatio);
    if (!at) return;
    event.preventDefault();
    event.currentTarget.setPointerCapture?.(event.pointerId);
    pointer.current = event.pointerId;
    line.current = [at];
    setDrawing([at]);
  };
  const move = (event: PointerEvent<SVGSVGElement>) => {
    const last = line.current.at(-1);
    const at = placeOf(event, scaleRatio);
    if (event.pointerId !== pointer.current || !last || !at || line.current.length >= MOST_PLACES) return;
    const stepMm = (Math.hypot(at[0] - last[0], at[1] - last[1]) * 1000) / scaleRatio;
    if (stepMm < LEAST_STEP_MM) return;
    line.current = [...line.current, at];
    setDrawing(line.current);
  };
  const end = (event: PointerEvent<SVGSVGElement>) => {
    if (event.pointerId !== pointer.current) return;
    pointer.current = null;
    setDrawing(null);
    // A touch that did not move was no line.
    if (line.current.length > 1 && event.type === "pointerup") onLine(line.current);
    line.current = [];
  };
  /** Lets go of the line under way: a second finger came down, and the two move the sheet. */
  const drop = () => {
    pointer.current = null;
    line.current = [];
    setDrawing(null);
  };
  return {
    drawing,
    drop,
    handlers: { onPointerDown: begin, onPointerMove: move, onPointerUp: end, onPointerCancel: end },
  };
}

/** Where a pointer stands on the drawing, metres; the sheet is drawn in millimetres of paper, downward. */
function placeOf(event: PointerEvent<SVGSVGElement>, scaleRatio: number): Place | null {
  const sheet = event.currentTarget.querySelector<SVGGElement>("g[data-ratio]");
  const matrix = sheet?.getScreenCTM?.();
  if (!matrix) return null;
  const { x, y } = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix.inverse());
  const metres = (mm: number) => Math.round((mm * scaleRatio * KEPT) / 1000) / KEPT;
  return [metres(x), metres(-y)];
}

/** A ring about a place of the drawing, for those who draw by keys. */
export function ringAbout([x, y]: Place, scaleRatio: number): RedLine {
  const radius = (RING_MM * scaleRatio) / 1000;
  return Array.from({ length: RING_PLACES + 1 }, (_, i): Place => {
    const turn = (2 * Math.PI * i) / RING_PLACES;
    return [x + radius * Math.cos(turn), y + radius * Math.sin(turn)];
  });
}

/** The red pencil's lines, over the drawing. */
export function RedLines({ lines, scaleRatio }: { readonly lines: readonly RedLine[]; readonly scaleRatio: number }) {
  return lines.map((line, i) => (
    <polyline
      // biome-ignore lint/suspicious/noArrayIndexKey: lines are only added and taken away at the end
      key={i}
      className="red-pencil"
      points={line.map((at) => toPaper(at, scaleRatio).join(",")).join(" ")}
    />
  ));
}
