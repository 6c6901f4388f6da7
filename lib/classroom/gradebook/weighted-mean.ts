export type Weighed = { readonly value: number | null; readonly weight: number };

/** The mean by weight of the values there are; null where there is none, or none that weighs anything. */
export function weightedMean(weighed: readonly Weighed[]): number | null {
  const there = weighed.flatMap(({ value, weight }) => (value === null || !(weight > 0) ? [] : [{ value, weight }]));
  const whole = there.reduce((sum, { weight }) => sum + weight, 0);
  return whole > 0 ? there.reduce((sum, { value, weight }) => sum + value * weight, 0) / whole : null;
}
