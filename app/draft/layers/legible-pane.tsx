"use client";

import { type ReactNode, useMemo } from "react";
import { useStore } from "zustand";
import { legibleTimes } from "@/app/_sheet/legible-times";
import { SheetContext, useSheet } from "@/app/_sheet/sheet-context";
import type { Plane } from "@/app/_sheet/view";

/** What is inside is laid out for a scale at which its letters can be read. Places stay as they are: they are metres. */
export function LegiblePane({ plane, children }: { readonly plane: Plane; readonly children: ReactNode }) {
  const sheet = useSheet();
  const times = useStore(sheet.views, (views) => legibleTimes(views[plane], sheet.scaleRatio));
  const scaleRatio = sheet.scaleRatio * times;
  const inside = useMemo(() => ({ ...sheet, scaleRatio }), [sheet, scaleRatio]);
  return <SheetContext value={inside}>{children}</SheetContext>;
}
