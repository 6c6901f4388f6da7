type Pair = readonly [number, number];

/** Bends are drawn by straight pieces that turn no more than this, radians: of a door's swing, under a millimetre from it. */
const BEND_STEP = Math.PI / 36;

/** Points of an arc of an ellipse, both ends included: centre + cos t * major + sin t * minor, for t from `from` by `sweep`. */
export function ellipsePoints(centre: Pair, major: Pair, minor: Pair, from: number, sweep: number): readonly Pair[] {
  const pieces = Math.max(2, Math.ceil(Math.abs(sweep) / BEND_STEP - 1e-9));
  return Array.from({ length: pieces + 1 }, (_, i) => {
    const t = from + (sweep * i) / pieces;
    const [c, s] = [Math.cos(t), Math.sin(t)];
    return [centre[0] + c * major[0] + s * minor[0], centre[1] + c * major[1] + s * minor[1]] as const;
  });
}

/**
 * Points of the arc from `a` to `b` with a bulge: the tangent of a quarter of the angle it sweeps, above 0 counter-clockwise
 * (published DXF reference, from memory). The ends are exactly `a` and `b`.
 */
export function bulgePoints(a: Pair, b: Pair, bulge: number): readonly Pair[] {
  const sweep = 4 * Math.atan(bulge);
  const [hx, hy] = [(b[0] - a[0]) / 2, (b[1] - a[1]) / 2];
  // From the middle of the chord to the centre, as a share of half the chord, to its left.
  const share = (1 - bulge * bulge) / (2 * bulge);
  const centre: Pair = [a[0] + hx - hy * share, a[1] + hy + hx * share];
  const out: Pair = [a[0] - centre[0], a[1] - centre[1]];
  return [a, ...ellipsePoints(centre, out, [-out[1], out[0]], 0, sweep).slice(1, -1), b];
}
