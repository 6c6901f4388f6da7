"use client";

import { type ReactNode, useEffect, useState } from "react";
import { SheetContext } from "@/app/_sheet/sheet-context";
import { createSheetViews } from "@/app/_sheet/sheet-views";
import { BOARD_RATIO, type Board } from "./board";

/** What a pointing surface and the presses that zoom it lie on. */
export function BringSheet({ board, children }: { readonly board: Board; readonly children: ReactNode }) {
  const { bounds } = board;
  const [views] = useState(() => createSheetViews(bounds, bounds));
  const [sheet] = useState(() => ({ views, scaleRatio: BOARD_RATIO }));
  useEffect(() => views.getState().lay("never", bounds, bounds), [views, bounds]);
  return <SheetContext value={sheet}>{children}</SheetContext>;
}
