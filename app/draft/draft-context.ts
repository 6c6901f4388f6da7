"use client";

import { createContext, useContext } from "react";
import { useStore } from "zustand";
import { type Desk, type DeskStore, shownDraft } from "./desk";

export const DeskContext = createContext<DeskStore | null>(null);

/** The desk's store, for what acts on it. */
export function useDeskStore(): DeskStore {
  const store = useContext(DeskContext);
  if (!store) throw new Error("A part of the drafting desk must lie inside a DeskContext.");
  return store;
}

/** Something of the desk, for what shows it. */
export function useDesk<T>(select: (desk: Desk) => T): T {
  return useStore(useDeskStore(), select);
}

/** The exercise on the sheet, as it would be while something is dragged. */
export function useShownExercise() {
  return useDesk((desk) => shownDraft(desk).exercise);
}

/** The exercise as it is. */
export function useExercise() {
  return useDesk((desk) => desk.history.draft.exercise);
}
