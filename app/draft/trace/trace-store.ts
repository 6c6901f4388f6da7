import { createStore, type StoreApi } from "zustand/vanilla";
import { LEAST_STRENGTH, type Trace } from "./trace";

/** The photograph under the plan that is on the table. */
export type TraceDesk = {
  readonly trace: Trace | null;
  /** What taking away, laying or laying again replaced: it can be put back until the page is left, or another plan is opened. */
  readonly before: { readonly trace: Trace | null } | null;
  /** Whether a photograph is being laid: a new one, or the same again; null for neither. */
  readonly laying: "new" | "again" | null;
  /** Whether this browser kept it; null where that is not known yet. */
  readonly kept: boolean | null;
  readonly begin: (laying: "new" | "again") => void;
  readonly leave: () => void;
  readonly lay: (trace: Trace) => void;
  readonly takeAway: () => void;
  readonly putBack: () => void;
  readonly show: (shown: boolean) => void;
  readonly setStrength: (strength: number) => void;
  /** What was kept with the plan that comes on to the table. */
  readonly open: (trace: Trace | null) => void;
  readonly setKept: (kept: boolean) => void;
};

export type TraceStore = StoreApi<TraceDesk>;

export function createTraceDesk(): TraceStore {
  return createStore<TraceDesk>((set) => {
    const replace = (next: Trace | null) =>
      set(({ trace }) => ({ trace: next, before: { trace }, laying: null, kept: null }));
    const change = (part: Partial<Trace>) => set(({ trace }) => ({ trace: trace && { ...trace, ...part } }));
    return {
      trace: null,
      before: null,
      laying: null,
      kept: null,
      begin: (laying) => set({ laying }),
      leave: () => set({ laying: null }),
      lay: replace,
      takeAway: () => replace(null),
      putBack: () => set(({ trace, before }) => (before ? { trace: before.trace, before: { trace }, kept: null } : {})),
      show: (shown) => change({ shown }),
      setStrength: (strength) => change({ strength: Math.min(100, Math.max(LEAST_STRENGTH, strength)) }),
      open: (trace) => set({ trace, before: null, laying: null, kept: trace ? true : null }),
      setKept: (kept) => set({ kept }),
    };
  });
}
