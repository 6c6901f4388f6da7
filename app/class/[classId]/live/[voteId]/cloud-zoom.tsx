"use client";

import { Press } from "@/app/_parts/press";
import { viewOfPane, ZOOM_STEP } from "@/app/_sheet/pane-state";
import { useSheet } from "@/app/_sheet/sheet-context";
import { type Plane, type PointOn, toPx, type View } from "@/app/_sheet/view";
import type { Place } from "@/lib/classroom/live/cloud";

/** Brings the cloud closer: marks that a room calls near lie on each other in the whole drawing. */
export function CloudZoom({ plane, about }: { readonly plane: Plane; readonly about: Place | null }) {
  const { views } = useSheet();
  const closer = () => {
    const sheet = views.getState();
    const view = viewOfPane(sheet[plane]) as View;
    sheet.zoom(plane, ZOOM_STEP ** 2, about ? toPx(view, about as PointOn<Plane>) : undefined);
  };
  return (
    <div className="front-presses">
      <Press weight="small" onClick={closer}>
        Closer
      </Press>
      <Press weight="small" onClick={() => views.getState().whole(plane)}>
        Whole
      </Press>
    </div>
  );
}
