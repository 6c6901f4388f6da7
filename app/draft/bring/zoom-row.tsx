"use client";

import { useStore } from "zustand";
import { Press } from "@/app/_parts/press";
import { ZOOM_STEP } from "@/app/_sheet/pane-state";
import { useSheet } from "@/app/_sheet/sheet-context";
import type { PointingStore } from "./pointing-store";

/** Takes the last place back, and comes closer. */
export function ZoomRow({ pointing }: { readonly pointing: PointingStore }) {
  const { views } = useSheet();
  const whole = useStore(views, ({ plan }) => plan.factor === 1);
  const none = useStore(pointing, ({ before }) => before.length === 0);
  return (
    <div className="draft-row">
      <Press weight="small" disabled={none} onClick={() => pointing.getState().tell({ do: "take back" })}>
        Take back
      </Press>
      <Press weight="small" onClick={() => views.getState().zoom("plan", ZOOM_STEP)}>
        Closer
      </Press>
      <Press weight="small" disabled={whole} onClick={() => views.getState().zoom("plan", 1 / ZOOM_STEP)}>
        Further
      </Press>
      <Press weight="small" disabled={whole} onClick={() => views.getState().whole("plan")}>
        Whole
      </Press>
    </div>
  );
}
