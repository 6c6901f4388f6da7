type Pair = readonly [number, number];

/** A map of the plane that keeps lines straight: [x, y] goes to [a x + c y + e, b x + d y + f]. */
export type Affine = readonly [a: number, b: number, c: number, d: number, e: number, f: number];

export const AS_IT_IS: Affine = [1, 0, 0, 1, 0, 0];

export function applyAffine([a, b, c, d, e, f]: Affine, [x, y]: Pair): readonly [number, number] {
  return [a * x + c * y + e, b * x + d * y + f];
}

/** The map back; null for one that has no way back, since it lays the plane on a line. */
export function invertAffine([a, b, c, d, e, f]: Affine): Affine | null {
  const area = a * d - b * c;
  if (!(Math.abs(area) > 0) || !Number.isFinite(1 / area)) return null;
  return [d / area, -b / area, -c / area, a / area, (c * f - d * e) / area, (b * e - a * f) / area];
}

/** First `inner`, then `outer`. */
export function chainAffine(outer: Affine, inner: Affine): Affine {
  const [a, b, c, d, e, f] = outer;
  const [p, q, r, s, t, u] = inner;
  return [a * p + c * q, b * p + d * q, a * r + c * s, b * r + d * s, a * t + c * u + e, b * t + d * u + f];
}
