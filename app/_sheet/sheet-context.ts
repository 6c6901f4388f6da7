"use client";

import { createContext, useContext } from "react";
import type { StoreApi } from "zustand/vanilla";
import type { SheetViews } from "./sheet-views";

export type Sheet = {
  readonly views: StoreApi<SheetViews>;
  /** Stage metres to paper metres. */
  readonly scaleRatio: number;
};

export const SheetContext = createContext<Sheet | null>(null);

/** The sheet a pane lies on. */
export function useSheet(): Sheet {
  const sheet = useContext(SheetContext);
  if (!sheet) throw new Error("A pane must lie on a sheet: put it inside a SheetContext.");
  return sheet;
}
