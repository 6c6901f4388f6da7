"use client";

import { createContext, useContext } from "react";
import { useStore } from "zustand";
import type { Plane } from "@/app/_sheet/view";
import type { DemonstrationStep } from "@/lib/drawing/demonstration/demonstration-step";
import type { Exercise } from "@/lib/exercise/exercise";
import type { Demonstration, DemonstrationStore } from "./demonstration-store";

/** What stays the same through a whole demonstration. */
export type DemonstrationRoom = {
  readonly exercise: Exercise;
  /** What an exercise that is in no course is set aside under, or null; undefined for one of the course, which the server knows. */
  readonly own: string | null | undefined;
  /** The text of an exercise that is in no course; null for one of the course. */
  readonly text: string | null;
  readonly steps: readonly DemonstrationStep[];
  readonly store: DemonstrationStore;
  /** The drawing on which the point is found. */
  readonly plane: Plane;
};

export const DemonstrationContext = createContext<DemonstrationRoom | null>(null);

export function useRoom(): DemonstrationRoom {
  const room = useContext(DemonstrationContext);
  if (!room) throw new Error("This part belongs inside a demonstration.");
  return room;
}

/** A part of the demonstration that renders again only when that part changes. */
export function useDemonstration<T>(pick: (demonstration: Demonstration) => T): T {
  return useStore(useRoom().store, pick);
}

export function useStep(): DemonstrationStep {
  const { steps } = useRoom();
  const at = useDemonstration((demonstration) => demonstration.at);
  return steps[at] as DemonstrationStep;
}
