"use client";

import { useStore } from "zustand";
import { Press } from "@/app/_parts/press";
import { ZoomPresses } from "@/app/_sheet/zoom-presses";
import type { PointingStore } from "./pointing-store";

/** Takes the last place back, and comes closer. */
export function ZoomRow({ pointing }: { readonly pointing: PointingStore }) {
  const none = useStore(pointing, ({ before }) => before.length === 0);
  return (
    <div className="draft-row">
      <Press weight="small" disabled={none} onClick={() => pointing.getState().tell({ do: "take back" })}>
        Take back
      </Press>
      <ZoomPresses plane="plan" />
    </div>
  );
}
