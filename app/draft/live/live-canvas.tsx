"use client";

import { useEffect, useLayoutEffect, useRef } from "react";
import { viewOfPane } from "@/app/_sheet/pane-state";
import { useSheet } from "@/app/_sheet/sheet-context";
import { type Plane, type PxSize, pxPerMm, type View } from "@/app/_sheet/view";
import { useDeskStore } from "../desk/draft-context";
import { rememberHandPaths } from "./hand-paths";
import type { LivePaper } from "./live-paper";
import { type Pens, readPens } from "./pens";

const useBrowserLayoutEffect = typeof window === "undefined" ? useEffect : useLayoutEffect;

/** Pencils are read anew after a pause: the light or the size of the table may be another by then, milliseconds. */
const PAUSE_MS = 500;

/** What a canvas looks at: as its pane does, or otherwise, as a magnifier. */
export type Look = { readonly view: View; readonly size: PxSize };

type Props = {
  readonly plane: Plane;
  /** Paints what moves. */
  readonly paint: (paper: LivePaper) => void;
  /** What the painting hangs on, beside the view: it is painted once a frame, and only when something of that is another. */
  readonly hangsOn: () => readonly unknown[];
  readonly look?: (() => Look | null) | undefined;
};

/**
 * What moves, painted over a drawing that stays as it is: nothing of the page is laid out for it, which would cost more than a
 * frame has at hundreds of walls.
 */
export function LiveCanvas({ plane, paint, hangsOn, look }: Props) {
  const { views, scaleRatio } = useSheet();
  const store = useDeskStore();
  const place = useRef<HTMLCanvasElement>(null);

  useBrowserLayoutEffect(() => {
    const canvas = place.current;
    if (!canvas || typeof Path2D === "undefined") return;
    const context = canvas.getContext("2d");
    if (!context) return;
    const handPaths = rememberHandPaths();
    let asked = 0;
    let read = Number.NEGATIVE_INFINITY;
    let pens: Pens | null = null;
    let painted: readonly unknown[] = [];
    const show = () => {
      asked = 0;
      const pane = views.getState()[plane];
      const looked = look ? look() : { view: viewOfPane(pane), size: pane.size };
      const density = window.devicePixelRatio;
      const width = Math.round((looked?.size.width ?? 0) * density);
      const height = Math.round((looked?.size.height ?? 0) * density);
      const now = performance.now();
      if (!pens || now - read > PAUSE_MS) pens = readPens(canvas);
      read = now;
      const view = looked?.view;
      const from = [width, height, density, pens, view?.pxPerMetre, ...(view?.origin ?? []), ...hangsOn()];
      if (from.length === painted.length && from.every((each, i) => each === painted[i])) return;
      painted = from;
      // Another size empties it as well.
      if (canvas.width !== width || canvas.height !== height) Object.assign(canvas, { width, height });
      else {
        context.setTransform(1, 0, 0, 1, 0, 0);
        context.clearRect(0, 0, width, height);
      }
      if (!view || width === 0 || height === 0) return;
      const wholeMm = pxPerMm(viewOfPane(pane), scaleRatio) / pane.factor;
      paint({ context, pens, view, scaleRatio, density, wholeMm, handPaths });
    };
    const ask = () => {
      if (asked === 0) asked = requestAnimationFrame(show);
    };
    show();
    const stops = [store.subscribe(ask), views.subscribe(ask)];
    return () => {
      cancelAnimationFrame(asked);
      for (const stop of stops) stop();
    };
  }, [store, views, plane, scaleRatio, paint, hangsOn, look]);

  return <canvas ref={place} className="draft-live" />;
}
