import type { BroughtLayer, BroughtPoint } from "./brought";

export type BroughtBounds = { readonly least: BroughtPoint; readonly most: BroughtPoint };

/** The box round all lines of the layers, in their own unit; null when there are none. */
export function broughtBounds(layers: readonly Pick<BroughtLayer, "lines">[]): BroughtBounds | null {
  let [left, low, right, high] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const { lines } of layers)
    for (const { points } of lines)
      for (const [x, y] of points) {
        left = Math.min(left, x);
        right = Math.max(right, x);
        low = Math.min(low, y);
        high = Math.max(high, y);
      }
  return left <= right ? { least: [left, low], most: [right, high] } : null;
}
