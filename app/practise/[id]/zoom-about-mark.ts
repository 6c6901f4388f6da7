import type { StoreApi } from "zustand/vanilla";
import type { Place } from "@/app/_parts/kept-work/attempt";
import { viewOfPane } from "@/app/_sheet/pane-state";
import type { SheetViews } from "@/app/_sheet/sheet-views";
import { type Plane, toPx } from "@/app/_sheet/view";

/** Zooms a drawing about a place on it, so that it stays where it is on the screen; about the middle without one. */
export function zoomAboutMark(views: StoreApi<SheetViews>, plane: Plane, mark: Place | null, times: number): void {
  const state = views.getState();
  const at = mark && (plane === "picture" ? toPx(viewOfPane(state.picture), mark) : toPx(viewOfPane(state.plan), mark));
  state.zoom(plane, times, at ?? undefined);
}
