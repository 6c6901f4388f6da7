import { type Interval, intersect, unite } from "../../geometry/intervals";

/** Rings of corners as seen from a line in their plane: how far along it each corner stands, and how far beside it. */
export type BesideLine = {
  readonly along: ArrayLike<number>;
  readonly beside: ArrayLike<number>;
  /** Where each ring ends in the two lists above: the place after its last corner. */
  readonly ends: readonly number[];
};

/**
 * Where a line runs inside rings, by even and odd: holes need no mention. `strict` leaves out where it runs along an edge;
 * `closed` takes that in.
 *
 * A corner within `near` of the line stands on it. It is then counted to one side and, a second time, to the other, as if the
 * line were moved a hair off either way. Every ring is thereby crossed an even number of times whatever the rounding, and a
 * line through a corner or along an edge is never a special case.
 */
export function crossingStretches(
  rings: BesideLine,
  near: number,
): { readonly strict: readonly Interval[]; readonly closed: readonly Interval[] } {
  const { beside } = rings;
  let [left, right, on] = [0, 0, 0];
  for (let i = 0; i < beside.length; i++) {
    const gap = beside[i] as number;
    if (gap > near) left++;
    else if (gap < -near) right++;
    else on++;
  }
  if (left + on === 0 || right + on === 0 || left + right === 0) return { strict: [], closed: [] };
  const one = crossings(rings, near, true);
  if (on === 0) return { strict: one, closed: one };
  const other = crossings(rings, near, false);
  return { strict: intersect(one, other), closed: unite([...one, ...other]) };
}

function crossings({ along, beside, ends }: BesideLine, near: number, onIsLeft: boolean): readonly Interval[] {
  const least = onIsLeft ? -near : near;
  const places: number[] = [];
  let start = 0;
  for (const end of ends) {
    for (let i = start, last = end - 1; i < end; last = i++) {
      const a = beside[last] as number;
      const b = beside[i] as number;
      if (a > least === b > least) continue;
      const p = along[last] as number;
      // One of the two may stand on the line, with a gap of either sign: the crossing is at that corner, not beyond it.
      places.push(p + ((along[i] as number) - p) * Math.min(1, Math.max(0, a / (a - b))));
    }
    start = end;
  }
  places.sort((p, q) => p - q);
  return unite(places.flatMap((place, i): Interval[] => (i % 2 === 1 ? [[places[i - 1] as number, place]] : [])));
}
