import Flatbush from "flatbush";
import type { PlanPoint } from "../../../stage/frame";

type Ends = { readonly a: PlanPoint; readonly b: PlanPoint };

/** Finds pieces whose box comes near another's. */
export function piecesNear(pieces: readonly Ends[]): (piece: Ends, reach: number) => readonly number[] {
  if (pieces.length === 0) return () => [];
  const index = new Flatbush(pieces.length);
  for (const { a, b } of pieces)
    index.add(Math.min(a[0], b[0]), Math.min(a[1], b[1]), Math.max(a[0], b[0]), Math.max(a[1], b[1]));
  index.finish();
  return ({ a, b }, reach) =>
    index
      .search(
        Math.min(a[0], b[0]) - reach,
        Math.min(a[1], b[1]) - reach,
        Math.max(a[0], b[0]) + reach,
        Math.max(a[1], b[1]) + reach,
      )
      .toSorted((one, other) => one - other);
}

/** Sets of numbers that belong together, by joining two at a time. */
export function joinSets(count: number) {
  const parent = Array.from({ length: count }, (_, i) => i);
  const find = (i: number): number => {
    let root = i;
    while (parent[root] !== root) root = parent[root] as number;
    for (let at = i; at !== root; ) {
      const next = parent[at] as number;
      parent[at] = root;
      at = next;
    }
    return root;
  };
  return {
    find,
    join: (i: number, j: number): void => {
      const [one, other] = [find(i), find(j)];
      parent[Math.max(one, other)] = Math.min(one, other);
    },
    /** The members of each set, in order. */
    sets: (): readonly (readonly number[])[] => {
      const sets = new Map<number, number[]>();
      for (let i = 0; i < count; i += 1) {
        const root = find(i);
        const set = sets.get(root) ?? [];
        if (set.length === 0) sets.set(root, set);
        set.push(i);
      }
      return [...sets.values()];
    },
  };
}
