/** A place on the drawing that is marked: picture metres, or plan metres where the plan is read back. */
export type Place = readonly [number, number];

/**
 * How marks scatter. `none`: too few to say. `line`: they lie on one line, `half` to either side of the mean. `ellipse`: half
 * axes in metres, the longer first; `turn` is the longer one's angle from the first axis, radians counter-clockwise.
 */
export type Spread =
  | { readonly kind: "none" }
  | { readonly kind: "line"; readonly half: number; readonly turn: number }
  | { readonly kind: "ellipse"; readonly halfLong: number; readonly halfShort: number; readonly turn: number };

export type Cloud = { readonly count: number; readonly mean: Place | null; readonly spread: Spread };

/** So many marks there must be before their scatter is drawn: two always lie on a line. */
const LEAST_FOR_SPREAD = 3;

/** The share of marks that the ellipse holds, if they scatter as a normal distribution in the plane. */
export const HELD_SHARE = 2 / 3;

/** A normal distribution in the plane has the share p within sqrt(-2 ln(1 - p)) sigmas (chi squared of two degrees of freedom). */
const SIGMAS = Math.sqrt(-2 * Math.log(1 - HELD_SHARE));

/** Axes shorter than this are none, metres: far under a pencil's width on any paper. */
const NO_WIDTH_M = 1e-6;

/** Mean and spread of marks: the sample covariance's ellipse, divided by n - 1. */
export function cloudOf(places: readonly Place[]): Cloud {
  const count = places.length;
  if (count === 0) return { count, mean: null, spread: { kind: "none" } };
  const mean: Place = [sum(places.map(([x]) => x)) / count, sum(places.map(([, y]) => y)) / count];
  return { count, mean, spread: count < LEAST_FOR_SPREAD ? { kind: "none" } : spreadOf(places, mean) };
}

function spreadOf(places: readonly Place[], mean: Place): Spread {
  const off = places.map(([x, y]): Place => [x - mean[0], y - mean[1]]);
  const over = places.length - 1;
  const xx = sum(off.map(([x]) => x * x)) / over;
  const yy = sum(off.map(([, y]) => y * y)) / over;
  const xy = sum(off.map(([x, y]) => x * y)) / over;
  // Eigenvalues of the symmetric matrix [xx xy; xy yy].
  const middle = (xx + yy) / 2;
  const apart = Math.hypot((xx - yy) / 2, xy);
  const long = SIGMAS * Math.sqrt(middle + apart);
  const short = SIGMAS * Math.sqrt(Math.max(middle - apart, 0));
  const turn = apart === 0 ? 0 : Math.atan2(2 * xy, xx - yy) / 2;
  if (!(long > NO_WIDTH_M)) return { kind: "none" };
  if (!(short > NO_WIDTH_M)) return { kind: "line", half: long, turn };
  return { kind: "ellipse", halfLong: long, halfShort: short, turn };
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
