"use client";

import { useEffect } from "react";
import type { DeskStore } from "./desk";

/** Undo and redo by keys, as everywhere else; in a line to write on, they are the line's own. */
export function useUndoKeys(store: DeskStore): void {
  useEffect(() => {
    const onKeyDown = (event: KeyboardEvent) => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey || event.defaultPrevented) return;
      if (event.target instanceof HTMLInputElement && event.target.type === "text") return;
      const key = event.key.toLowerCase();
      if (key === "z" && !event.shiftKey) store.getState().undo();
      else if (key === "y" || (key === "z" && event.shiftKey)) store.getState().redo();
      else return;
      event.preventDefault();
    };
    window.addEventListener("keydown", onKeyDown);
    return () => window.removeEventListener("keydown", onKeyDown);
  }, [store]);
}
