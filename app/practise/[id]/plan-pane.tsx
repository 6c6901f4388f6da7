"use client";

import { useMemo } from "react";
import { DrawList } from "@/app/_sheet/draw-list";
import { Pane } from "@/app/_sheet/pane";
import { drawPlan } from "@/lib/drawing/draw-plan";
import type { ProjectedPoint } from "@/lib/exercise/exercise-points";
import { AskedInPlan } from "./asked-in-plan";
import { usePracticeRoom } from "./practice-context";

/** The ground plan, with the point asked lit in it. */
export function PlanPane({ asked }: { readonly asked: ProjectedPoint }) {
  const { exercise } = usePracticeRoom();
  const list = useMemo(() => drawPlan(exercise), [exercise]);
  return (
    <div className="plan-place">
      <Pane plane="plan" drawingId="plan-drawing" role="img" aria-label="Ground plan, with the point asked lit.">
        <DrawList list={list} scaleRatio={exercise.scaleRatio} />
        <AskedInPlan point={asked} plan={list} />
      </Pane>
    </div>
  );
}
