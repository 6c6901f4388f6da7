"use client";

import { useMemo } from "react";
import { DrawList } from "@/app/_sheet/draw-list";
import { useSheet } from "@/app/_sheet/sheet-context";
import { drawHidden } from "@/lib/draft/sense/sightlines/draw-hidden";
import { drawSight } from "@/lib/draft/sense/sightlines/draw-sight";
import type { Sight } from "@/lib/draft/sense/sightlines/sight";
import { useExercise } from "../desk/draft-context";

/** What a seat sees of the plan, and what it does not, in the plan's own scale. */
export function SightLines({ sight }: { readonly sight: Sight }) {
  const { scaleRatio } = useSheet();
  const { plan } = useExercise();
  const list = useMemo(
    () => [...drawHidden(sight, plan, scaleRatio), ...drawSight(sight, scaleRatio)],
    [sight, plan, scaleRatio],
  );
  return <DrawList list={list} scaleRatio={scaleRatio} />;
}
