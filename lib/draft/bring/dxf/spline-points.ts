type Pair = readonly [number, number];

export type Spline = {
  readonly degree: number;
  readonly knots: readonly number[];
  readonly controls: readonly Pair[];
  /** One for each control point; empty when all weigh the same. */
  readonly weights: readonly number[];
};

/** Straight pieces between two knots of a curve. */
const PIECES = 18;

/**
 * Points of a B-spline, both ends included, by de Boor's recurrence on weighted points (de Boor 1972, from memory). Null when
 * its numbers do not fit together: knots = controls + degree + 1, rising.
 */
export function splinePoints(spline: Spline): readonly Pair[] | null {
  const { degree, knots, controls, weights } = spline;
  const fits =
    degree >= 1 &&
    controls.length > degree &&
    knots.length === controls.length + degree + 1 &&
    knots.every((knot, i) => i === 0 || knot >= (knots[i - 1] as number)) &&
    (weights.length === 0 || (weights.length === controls.length && weights.every((weight) => weight > 0)));
  if (!fits) return null;
  const points: Pair[] = [];
  for (let span = degree; span < controls.length; span += 1) {
    const [from, to] = [knots[span] as number, knots[span + 1] as number];
    if (!(to > from)) continue;
    for (let i = points.length === 0 ? 0 : 1; i <= PIECES; i += 1)
      points.push(pointAt(spline, span, from + ((to - from) * i) / PIECES));
  }
  return points.length > 1 ? points : null;
}

function pointAt({ degree, knots, controls, weights }: Spline, span: number, t: number): Pair {
  const row = Array.from({ length: degree + 1 }, (_, i) => {
    const [x, y] = controls[span - degree + i] as Pair;
    const weight = weights[span - degree + i] ?? 1;
    return [x * weight, y * weight, weight] as [number, number, number];
  });
  for (let round = 1; round <= degree; round += 1)
    for (let i = degree; i >= round; i -= 1) {
      const low = knots[span - degree + i] as number;
      const high = knots[span + i + 1 - round] as number;
      const share = high > low ? (t - low) / (high - low) : 0;
      const [a, b] = [row[i - 1] as number[], row[i] as number[]];
      row[i] = [0, 1, 2].map((k) => (a[k] as number) * (1 - share) + (b[k] as number) * share) as [
        number,
        number,
        number,
      ];
    }
  const [x, y, weight] = row[degree] as [number, number, number];
  return [x / weight, y / weight];
}
