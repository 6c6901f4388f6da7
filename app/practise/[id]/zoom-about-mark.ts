import type { StoreApi } from "zustand/vanilla";
import type { Place } from "@/app/_progress/attempt";
import { viewOfPane } from "@/app/_sheet/pane-state";
import type { SheetViews } from "@/app/_sheet/sheet-views";
import { toPx } from "@/app/_sheet/view";

/** Zooms the picture about the mark on hand, so that it stays where it is on the screen; about the middle without one. */
export function zoomAboutMark(views: StoreApi<SheetViews>, mark: Place | null, times: number): void {
  const state = views.getState();
  state.zoom("picture", times, mark ? toPx(viewOfPane(state.picture), mark) : undefined);
}
