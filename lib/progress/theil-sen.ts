import type { Vector2 } from "../geometry/vector";

export type Trend =
  | { readonly found: true; readonly slope: number; readonly intercept: number }
  /** Fewer than two places along x: no line runs through them. */
  | { readonly found: false };

/**
 * The line through points [x, y] by the median of the slopes of all pairs with different x, and the median of what it
 * leaves of y: Theil (1950), Indagationes Mathematicae 12, 85-91, 173-177 and 397-412, as Sen (1968), Journal of the
 * American Statistical Association 63, 1379-1389, has it for equal x. It bears more than a quarter of wild points.
 */
export function theilSen(points: readonly Vector2[]): Trend {
  const slopes = points.flatMap(([x, y], i) =>
    points.slice(i + 1).flatMap(([u, v]) => (u === x ? [] : [(v - y) / (u - x)])),
  );
  const slope = median(slopes);
  const intercept = slope === null ? null : median(points.map(([x, y]) => y - slope * x));
  return slope === null || intercept === null ? { found: false } : { found: true, slope, intercept };
}

/** The middle value, or the mean of the middle two; null of nothing. */
export function median(values: readonly number[]): number | null {
  const sorted = [...values].sort((a, b) => a - b);
  const above = sorted[sorted.length >> 1];
  const below = sorted[(sorted.length - 1) >> 1];
  return above === undefined || below === undefined ? null : below / 2 + above / 2;
}
