import { createStore, type StoreApi } from "zustand/vanilla";
import { type Pointing, type PointingEvent, point, startPointing } from "@/lib/draft/bring/pointing/pointing";

/** What is pointed at on one drawing. It lives outside React's rendering, so that holding the pointer renders no drawing. */
export type PointingStore = StoreApi<Pointing & { readonly tell: (event: PointingEvent) => void }>;

export function createPointing(asksSize: boolean): PointingStore {
  return createStore((set) => ({
    ...startPointing(asksSize),
    tell: (event) => set((now) => point(now, event)),
  }));
}
