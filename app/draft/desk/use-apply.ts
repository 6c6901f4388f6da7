"use client";

import { useCallback } from "react";
import type { Edit } from "@/lib/draft/edit";
import { useDeskStore } from "./draft-context";

/** Makes an edit; null when it is made, else why it cannot be. */
export function useApply(): (change: Edit) => string | null {
  const store = useDeskStore();
  return useCallback(
    (change) => {
      const edited = store.getState().apply(change);
      return edited.ok ? null : edited.say;
    },
    [store],
  );
}
