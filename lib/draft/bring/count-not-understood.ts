import type { NotUnderstood } from "./brought";

/** So many places are named of each kind; more would not be read. */
const PLACES_NAMED = 3;

/** Counts what a reader passes over; made anew for each file. */
export type PassedOver = {
  readonly add: (what: string, where: string) => void;
  readonly list: () => readonly NotUnderstood[];
};

export function countNotUnderstood(): PassedOver {
  const kinds = new Map<string, { count: number; where: string[] }>();
  return {
    add: (what, where) => {
      const kind = kinds.get(what) ?? { count: 0, where: [] };
      kinds.set(what, kind);
      kind.count += 1;
      if (kind.where.length < PLACES_NAMED && !kind.where.includes(where)) kind.where.push(where);
    },
    list: () =>
      [...kinds].map(([what, { count, where }]) => ({ what, count, where })).sort((a, b) => b.count - a.count),
  };
}
