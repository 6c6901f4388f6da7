"use client";

import { useCallback, useEffect, useRef, useState } from "react";
import { findShelf } from "@/app/_parts/kept-work/shelf";
import type { LengthUnits } from "@/lib/measure/length";
import { useDeskStore } from "../desk/draft-context";
import { forgetPlan, freshKey, type KeptPlan, keepPlan, keptAt, keptPlans, lastOpen, openKept } from "./kept-plans";
import { recallAtLeisure } from "./recall-at-leisure";

/** So long after the last change the plan is kept, milliseconds. */
const REST_MS = 400;

export type Shelved = {
  /** `opening`: what was kept is being fetched. `gone`: this browser keeps nothing. */
  readonly state: "opening" | "keeping" | "gone";
  /** Which of them is on the table. */
  readonly opened: string;
  /** The plan was changed in another tab as well, so what is drawn here is kept as a plan of its own. */
  readonly parted: boolean;
  readonly plans: readonly KeptPlan[];
  readonly open: (key: string) => void;
  readonly begin: (units: LengthUnits) => void;
  readonly throwAway: (key: string) => void;
  /** Keeps the plan at once, changed or not; false when the browser refuses. */
  readonly keepNow: () => boolean;
};

/** The plan is kept in the browser as it is drawn, with its steps; the one that was open last is there again. */
export function useKeptPlan(): Shelved {
  const store = useDeskStore();
  const [state, setState] = useState<Shelved["state"]>("opening");
  const [opened, setOpened] = useState("1");
  const [plans, setPlans] = useState<readonly KeptPlan[]>([]);
  const [parted, setParted] = useState(false);
  const now = useRef(opened);
  /** When this tab kept or opened the plan last: kept at any other time, another tab has changed it. */
  const seen = useRef<string | null>(null);

  const keep = useCallback(() => {
    const shelf = findShelf();
    const there = shelf && keptAt(shelf, now.current);
    if (shelf && there !== null && there !== seen.current) {
      now.current = freshKey(shelf);
      setOpened(now.current);
      setParted(true);
    }
    store.getState().recall();
    const { history, done, undone, hand, measures } = store.getState();
    const at = new Date().toISOString();
    const kept = shelf !== null && keepPlan(shelf, now.current, { history, done, undone, hand, measures }, at);
    if (kept) seen.current = at;
    setState(kept ? "keeping" : "gone");
    if (shelf) setPlans(keptPlans(shelf));
    return kept;
  }, [store]);

  const open = useCallback(
    async (wanted: string) => {
      const shelf = findShelf();
      if (!shelf) return;
      const { readDraft } = await import("@/lib/draft/read-draft");
      const kept = openKept(shelf, wanted, (text) => {
        const reading = readDraft(text);
        return reading.ok ? reading.draft : null;
      });
      if (!kept) return;
      now.current = wanted;
      seen.current = keptAt(shelf, wanted);
      setOpened(wanted);
      setParted(false);
      store.getState().open(kept.work, kept);
      recallAtLeisure(store);
    },
    [store],
  );
  const begin = useCallback(
    (units: LengthUnits) => {
      const shelf = findShelf();
      keep();
      now.current = shelf ? freshKey(shelf) : "1";
      seen.current = null;
      setOpened(now.current);
      setParted(false);
      store.getState().begin(units);
      keep();
    },
    [store, keep],
  );
  const throwAway = useCallback((wanted: string) => {
    const shelf = findShelf();
    if (!shelf) return;
    forgetPlan(shelf, wanted);
    setPlans(keptPlans(shelf));
  }, []);

  useEffect(() => {
    let here = true;
    let later: ReturnType<typeof setTimeout> | undefined;
    let stop: (() => void) | undefined;
    const flush = () => {
      if (later === undefined) return;
      clearTimeout(later);
      later = undefined;
      keep();
    };
    const start = async () => {
      const shelf = findShelf();
      const last = shelf && lastOpen(shelf);
      if (shelf && last !== null) await open(last);
      if (!here) return;
      setState(shelf ? "keeping" : "gone");
      if (shelf) setPlans(keptPlans(shelf));
      stop = store.subscribe((desk, before) => {
        const draft = desk.history.draft;
        const same = draft === before.history.draft && desk.hand === before.hand && desk.measures === before.measures;
        if (same) return;
        clearTimeout(later);
        later = setTimeout(flush, REST_MS);
      });
    };
    start();
    window.addEventListener("pagehide", flush);
    document.addEventListener("visibilitychange", flush);
    return () => {
      here = false;
      flush();
      stop?.();
      window.removeEventListener("pagehide", flush);
      document.removeEventListener("visibilitychange", flush);
    };
  }, [store, keep, open]);

  return { state, opened, parted, plans, open, begin, throwAway, keepNow: keep };
}
