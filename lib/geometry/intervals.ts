/** A stretch of a line, by its parameters; from below to. */
export type Interval = readonly [from: number, to: number];

/** The same stretches in order and apart: what overlaps or touches becomes one, what has no length is left out. */
export function unite(stretches: readonly Interval[]): readonly Interval[] {
  if (stretches.length === 1 && stretches[0] && stretches[0][1] > stretches[0][0]) return stretches;
  const sorted = stretches.filter(([from, to]) => to > from).sort(([a], [b]) => a - b);
  const apart: [number, number][] = [];
  for (const [from, to] of sorted) {
    const last = apart.at(-1);
    if (last && from <= last[1]) last[1] = Math.max(last[1], to);
    else apart.push([from, to]);
  }
  return apart;
}

/** Where both lie, of two lists that are each in order and apart. */
export function intersect(one: readonly Interval[], other: readonly Interval[]): readonly Interval[] {
  const shared: Interval[] = [];
  for (const [a, b] of one) {
    for (const [c, d] of other) {
      const from = Math.max(a, c);
      const to = Math.min(b, d);
      if (to > from) shared.push([from, to]);
    }
  }
  return shared;
}

/** What of a stretch is left when others, in any order, are taken away. */
export function without([from, to]: Interval, taken: readonly Interval[]): readonly Interval[] {
  const left: Interval[] = [];
  let at = from;
  for (const [a, b] of unite(taken)) {
    if (a > at && at < to) left.push([at, Math.min(a, to)]);
    at = Math.max(at, b);
  }
  if (to > at) left.push([at, to]);
  return left;
}
