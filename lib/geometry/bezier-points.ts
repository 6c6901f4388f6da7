type Pair = readonly [number, number];

/** A curve's pieces: enough that none turns more than the hand style takes for a curve. */
const PIECES = 16;

/** Points of a cubic Bezier curve, both ends included; `pieces` straight pieces, a whole number above 0. */
export function bezierPoints(a: Pair, b: Pair, c: Pair, d: Pair, pieces = PIECES): readonly Pair[] {
  return Array.from({ length: pieces + 1 }, (_, i) => {
    const t = i / pieces;
    const r = 1 - t;
    const [wa, wb, wc, wd] = [r ** 3, 3 * r * r * t, 3 * r * t * t, t ** 3];
    return [wa * a[0] + wb * b[0] + wc * c[0] + wd * d[0], wa * a[1] + wb * b[1] + wc * c[1] + wd * d[1]] as const;
  });
}
