"use client";

import { useState } from "react";
import { AtPoint } from "@/app/_sheet/end-marks";
import { useSheet } from "@/app/_sheet/sheet-context";
import type { BroughtPoint } from "@/lib/draft/bring/brought";
import { type Board, toBoard } from "./board";

/** A place that is shown is come so near to. */
const SHOWN_TIMES = 4;

/** Comes closer to a place of the drawing, and rings it. */
export function useShowPlace(board: Board) {
  const { views } = useSheet();
  const [shown, setShown] = useState<BroughtPoint | null>(null);
  const show = (at: BroughtPoint) => {
    const { plan } = views.getState();
    views.setState({ plan: { ...plan, factor: Math.max(plan.factor, SHOWN_TIMES), centre: toBoard(board, at) } });
    setShown(at);
  };
  return { shown, show };
}

export function ShowPlace({ board, at }: { readonly board: Board; readonly at: BroughtPoint | null }) {
  const { scaleRatio } = useSheet();
  if (!at) return null;
  return (
    <AtPoint at={toBoard(board, at)} scaleRatio={scaleRatio}>
      <circle r={18} className="true-halo" />
      <circle r={18} className="bring-shown" />
    </AtPoint>
  );
}
