"use client";

import { useEffect } from "react";
import { findShelf, keysOf, PLAN_KEY } from "@/app/_parts/kept-work/shelf";
import type { Shelved } from "../kept/use-kept-plan";
import { useTraceStore } from "./trace-context";
import { forgetOtherTraces, forgetTrace, keepTrace, keptTrace } from "./trace-shelf";

/** So long after its strength last changed the photograph is kept, milliseconds. */
const REST_MS = 400;

/** The photograph is kept beside its plan: it comes back with it, and goes when the plan is thrown away. */
export function useKeptTrace({ state, opened, plans, keepNow }: Shelved): void {
  const store = useTraceStore();
  const isOpening = state === "opening";

  // biome-ignore lint/correctness/useExhaustiveDependencies: plans that come and go are what this waits for
  useEffect(() => {
    const shelf = isOpening ? null : findShelf();
    // Asked anew: a plan may have come on to the shelf from another window.
    if (shelf) forgetOtherTraces([opened, ...keysOf(shelf, PLAN_KEY).map((key) => key.slice(PLAN_KEY.length))]);
  }, [isOpening, opened, plans]);

  useEffect(() => {
    if (isOpening) return;
    let here = true;
    let fetching = false;
    let later: ReturnType<typeof setTimeout> | undefined;
    const keep = async () => {
      const { trace } = store.getState();
      if (!trace) return forgetTrace(opened);
      // A photograph with no plan beside it would be forgotten: nothing may have been drawn yet.
      const kept = keepNow() && (await keepTrace(opened, trace));
      if (here) store.getState().setKept(kept);
    };
    const flush = () => {
      if (later === undefined) return;
      clearTimeout(later);
      later = undefined;
      keep();
    };
    const fetchKept = async () => {
      const trace = await keptTrace(opened);
      const { trace: laid, before } = store.getState();
      // One that was laid meanwhile counts.
      if (!here || laid || before) return;
      fetching = true;
      store.getState().open(trace);
      fetching = false;
    };
    store.getState().open(null);
    fetchKept();
    const stop = store.subscribe((now, before) => {
      if (fetching || now.trace === before.trace) return;
      clearTimeout(later);
      // Only what may be dragged waits for its rest.
      later = setTimeout(flush, now.trace?.lines === before.trace?.lines ? REST_MS : 0);
    });
    window.addEventListener("pagehide", flush);
    document.addEventListener("visibilitychange", flush);
    return () => {
      flush();
      here = false;
      stop();
      window.removeEventListener("pagehide", flush);
      document.removeEventListener("visibilitychange", flush);
    };
  }, [isOpening, opened, store, keepNow]);
}
