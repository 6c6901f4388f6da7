/**
 * The least whole number from `first` to `last` that holds, or null where none is found: by halving, as though all above one
 * that holds did too. Where that is not so it may not be the least, yet it holds, and the one before it does not.
 */
export function findLeast(first: number, last: number, holds: (n: number) => boolean): number | null {
  let [low, high] = [first, last];
  if (!(low <= high) || !holds(high)) return null;
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    if (holds(middle)) high = middle;
    else low = middle + 1;
  }
  return high;
}
