"use client";

import { useStore } from "zustand";
import { Press } from "@/app/_parts/press";
import { viewOfPane, ZOOM_STEP } from "./pane-state";
import { useSheet } from "./sheet-context";
import { type Plane, type PointOn, toPx, type View } from "./view";

type Props = {
  readonly plane: Plane;
  /** What coming closer keeps in its place; left out, the middle of the pane. */
  readonly about?: () => readonly [number, number] | null;
};

/** Closer, further, and the whole. */
export function ZoomPresses({ plane, about }: Props) {
  const { views } = useSheet();
  const whole = useStore(views, (state) => state[plane].factor === 1);
  const { by, all } = useZoom(plane, about);
  return (
    <>
      <Press weight="small" onClick={() => by(ZOOM_STEP)}>
        Closer
      </Press>
      <Press weight="small" disabled={whole} onClick={() => by(1 / ZOOM_STEP)}>
        Further
      </Press>
      <Press weight="small" disabled={whole} onClick={all}>
        Whole
      </Press>
    </>
  );
}

/** Zooming one drawing of the sheet, about a place of it. */
export function useZoom(plane: Plane, about: Props["about"] = () => null) {
  const { views } = useSheet();
  return {
    by: (times: number) => {
      const at = about();
      const view = viewOfPane(views.getState()[plane]) as View<Plane>;
      views.getState().zoom(plane, times, at ? toPx(view, at as PointOn<Plane>) : undefined);
    },
    all: () => views.getState().whole(plane),
  };
}
