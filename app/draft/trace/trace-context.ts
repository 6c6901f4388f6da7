"use client";

import { createContext, useContext } from "react";
import { useStore } from "zustand";
import type { TraceDesk, TraceStore } from "./trace-store";

export const TraceContext = createContext<TraceStore | null>(null);

/** What lies under the plan, for what acts on it. */
export function useTraceStore(): TraceStore {
  const store = useContext(TraceContext);
  if (!store) throw new Error("What lies under the plan must be asked for inside a TraceContext.");
  return store;
}

/** Something of it, for what shows it. */
export function useTrace<T>(select: (desk: TraceDesk) => T): T {
  return useStore(useTraceStore(), select);
}
