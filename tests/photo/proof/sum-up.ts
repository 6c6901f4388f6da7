/** A value that so great a share of a list stays at or below; NaN of an empty list. */
export function quantile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.max(0, Math.ceil(share * sorted.length) - 1)] ?? Number.NaN;
}

export function shareOf<Item>(items: readonly Item[], is: (item: Item) => boolean): number {
  return items.length === 0 ? 0 : items.filter(is).length / items.length;
}
