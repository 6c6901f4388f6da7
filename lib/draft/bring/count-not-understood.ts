import type { BroughtPoint, NotUnderstood } from "./brought";

/** So many places are named of each kind; more would not be read. */
const PLACES_NAMED = 3;
/** And so many can be shown. */
const PLACES_SHOWN = 12;

/** Counts what a reader passes over; made anew for each file. */
export type PassedOver = {
  /** `at` is left out where the place is not known; one that is no place counts for none. */
  readonly add: (what: string, where: string, at?: BroughtPoint) => void;
  readonly list: () => readonly NotUnderstood[];
};

export function countNotUnderstood(): PassedOver {
  const kinds = new Map<string, { count: number; where: string[]; at: BroughtPoint[] }>();
  return {
    add: (what, where, at) => {
      const kind = kinds.get(what) ?? { count: 0, where: [], at: [] };
      kinds.set(what, kind);
      kind.count += 1;
      if (kind.where.length < PLACES_NAMED && !kind.where.includes(where)) kind.where.push(where);
      if (at?.every(Number.isFinite) && kind.at.length < PLACES_SHOWN) kind.at.push(at);
    },
    list: () => [...kinds].map(([what, counted]) => ({ what, ...counted })).sort((a, b) => b.count - a.count),
  };
}
