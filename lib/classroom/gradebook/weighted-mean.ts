export type Weighed = { readonly value: number | null; readonly weight: number };

/** The mean by weight of the values there are; null where there is none, or none that weighs anything. */
export function weightedMean(weighed: readonly Weighed[]): number | null {
  const there = weighed.flatMap(({ value, weight }) => (value === null || !(weight > 0) ? [] : [{ value, weight }]));
  // Against the heaviest: products of the least weights there are would be lost.
  const most = Math.max(0, ...there.map(({ weight }) => weight));
  if (most === 0) return null;
  const shares = there.map(({ value, weight }) => ({ value, share: weight / most }));
  const whole = shares.reduce((sum, { share }) => sum + share, 0);
  return shares.reduce((sum, { value, share }) => sum + value * share, 0) / whole;
}
