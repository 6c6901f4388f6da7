"use client";

import { useMemo } from "react";
import { DrawList } from "@/app/_sheet/draw-list";
import { useSheet } from "@/app/_sheet/sheet-context";
import { drawHidden } from "@/lib/draft/sense/sightlines/draw-hidden";
import { drawSight } from "@/lib/draft/sense/sightlines/draw-sight";
import type { Sight } from "@/lib/draft/sense/sightlines/sight";
import { useDesk, useExercise } from "../draft-context";

/** Over the plan that is drawn on: what the chosen seat sees and does not, while nothing moves. */
export function SightOverPlan() {
  const sight = useDesk((desk) => (desk.drawer === "notes" && !desk.trying ? desk.sight : null));
  return sight && <Lines sight={sight} />;
}

function Lines({ sight }: { readonly sight: Sight }) {
  const { scaleRatio } = useSheet();
  const { plan } = useExercise();
  const list = useMemo(
    () => [...drawHidden(sight, plan, scaleRatio), ...drawSight(sight, scaleRatio)],
    [sight, plan, scaleRatio],
  );
  return <DrawList list={list} scaleRatio={scaleRatio} />;
}
