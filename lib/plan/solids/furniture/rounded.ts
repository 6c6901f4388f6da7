/** Facets of a rounded corner. */
const CORNER_FACETS = 4;

/**
 * A rectangle with both its upper corners rounded, counter-clockwise from its lower left corner, and the places of the
 * corners that lie inside a curve. The radius is held to what fits.
 */
export function roundedTop(
  [left, right]: readonly [number, number],
  [low, high]: readonly [number, number],
  radius: number,
): { readonly ring: readonly (readonly [number, number])[]; readonly smooth: readonly number[] } {
  const r = Math.min(radius, (right - left) * 0.49, (high - low) * 0.9);
  const arc = (centre: number, from: number) =>
    Array.from({ length: CORNER_FACETS + 1 }, (_, i): readonly [number, number] => {
      const angle = from + (Math.PI / 2) * (i / CORNER_FACETS);
      return [centre + r * Math.cos(angle), high - r + r * Math.sin(angle)];
    });
  const ring = [[left, low], [right, low], ...arc(right - r, 0), ...arc(left + r, Math.PI / 2)] as const;
  return { ring, smooth: ring.map((_, i) => i).slice(2) };
}
