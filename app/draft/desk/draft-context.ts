"use client";

import { createContext, useContext, useEffect, useState } from "react";
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

/** What follows a change this soon moves, milliseconds. */
const REST_MS = 100;

/**
 * Something of the desk, for what writes of it: while it changes with every move, it is told again only when it rests and can be
 * read. What a form sets is told at once, however soon after another change: a list would go back to what it showed before.
 */
export function useRestingDesk<T>(select: (desk: Desk) => T): T {
  const store = useDeskStore();
  const [value, setValue] = useState(() => select(store.getState()));
  useEffect(() => {
    let later: ReturnType<typeof setTimeout> | undefined;
    let last = Number.NEGATIVE_INFINITY;
    const tell = () => setValue(() => select(store.getState()));
    const changed = (desk: Desk) => {
      clearTimeout(later);
      const now = performance.now();
      const moves = desk.moves && (desk.trying !== null || desk.aim !== null) && now - last < REST_MS;
      last = now;
      if (moves) later = setTimeout(tell, REST_MS);
      else tell();
    };
    tell();
    const stop = store.subscribe(changed);
    return () => {
      clearTimeout(later);
      stop();
    };
  }, [store, select]);
  return value;
}

/** The exercise on the sheet, as it would be while something is dragged, told when that rests. */
export function useShownExercise() {
  return useRestingDesk(shownExercise);
}

function shownExercise(desk: Desk) {
  return shownDraft(desk).exercise;
}

/** The exercise as it is. */
export function useExercise() {
  return useDesk((desk) => desk.history.draft.exercise);
}
