type Place = readonly [across: number, up: number];

/** Fewer marks than these spread in no direction of their own. */
const LEAST_MARKS = 3;
/** Marks that spread less than this, metres, lie at one place. */
const ONE_PLACE_M = 1e-9;

export type Spread =
  | { readonly kind: "few"; readonly n: number }
  | { readonly kind: "one-place"; readonly n: number; readonly mean: Place }
  | {
      readonly kind: "spread";
      readonly n: number;
      readonly mean: Place;
      /** Variances across and up and their covariance, square metres, with n - 1 below. */
      readonly covariance: { readonly across: number; readonly up: number; readonly both: number };
      /** Standard deviations along the long and the short axis, metres; the short one is 0 of marks on one line. */
      readonly long: number;
      readonly short: number;
      /** From across toward up to the long axis, radians, above -pi/2 and at most pi/2. */
      readonly turn: number;
    };

/** Where the marks of many lie: their mean, and how they spread about it by their covariance. Metres of the drawing. */
export function spreadOf(marks: readonly Place[]): Spread {
  const n = marks.length;
  if (n < LEAST_MARKS) return { kind: "few", n };
  const mean: Place = [sum(marks.map(([x]) => x)) / n, sum(marks.map(([, y]) => y)) / n];
  const off = marks.map(([x, y]): Place => [x - mean[0], y - mean[1]]);
  const across = sum(off.map(([x]) => x * x)) / (n - 1);
  const up = sum(off.map(([, y]) => y * y)) / (n - 1);
  const both = sum(off.map(([x, y]) => x * y)) / (n - 1);
  // The symmetric matrix's eigenvalues, in closed form.
  const [half, apart] = [(across + up) / 2, Math.hypot((across - up) / 2, both)];
  const long = Math.sqrt(half + apart);
  if (long < ONE_PLACE_M) return { kind: "one-place", n, mean };
  const short = Math.sqrt(Math.max(0, half - apart));
  const turn = Math.atan2(2 * both, across - up) / 2;
  return { kind: "spread", n, mean, covariance: { across, up, both }, long, short, turn };
}

/**
 * The quantile of the chi-square distribution with two degrees of freedom, which there is the exponential one of mean 2:
 * how many standard deviations, squared, the ellipse reaches that holds this share of marks spread normally.
 */
export function chiSquare2(share: number): number {
  if (!(share > 0 && share < 1)) throw new Error(`A share of marks lies between 0 and 1, not at ${share}.`);
  return -2 * Math.log(1 - share);
}

/** The half axes of the ellipse that holds a share of the marks, metres. */
export function ellipseAxes(
  { long, short }: Extract<Spread, { kind: "spread" }>,
  share: number,
): readonly [long: number, short: number] {
  const reach = Math.sqrt(chiSquare2(share));
  return [reach * long, reach * short];
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
