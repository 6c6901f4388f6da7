import type { Meeting } from "./fit-meeting";
import type { DrawingPlace, MarkedDrawing } from "./marked-drawing";
import type { Pairs, RectangleView } from "./read-rectangle";

/** Where the eye stands before the paper, as far as its drawing tells; millimetres of the drawing. */
export type Axis = { readonly cvp: number | null; readonly distanceMm: number | null };

/** Where a rectangle's pairs of sides vanish, the first side's first, millimetres along the horizon; null for sides that stay level. */
export type Sides = readonly [first: number | null, second: number | null];

/** What was read of a drawing: where groups vanish on the common horizon, by their places in the list of parallels. */
export type Vanishing = {
  readonly meetings: readonly Meeting[];
  readonly sighted: readonly { readonly group: number; readonly X: number | null }[];
  readonly view: RectangleView | null;
  readonly sides: Sides;
  readonly pairs: Pairs | null;
};

/** A vanishing point of known bearing: X = c + d cot(bearing). */
type Sighted = { readonly X: number; readonly variance: number; readonly cot: number };

/** Cotangents of bearings nearer than this are one bearing. */
const SAME_BEARING = 1e-6;

/**
 * The centre vanishing point c and the eye's distance d, from whatever tells them, in this order:
 * vanishing points of two known bearings, X = c + d cot(bearing); c from lines square to the plaster line, and d from a turned
 * rectangle's right angle, d^2 = (A - c)(c - B) with A and B where its sides vanish (Thales), or from the proportion of a
 * rectangle whose sides run along and square to it; both from a turned rectangle of known proportion:
 * with r = (proportion times the second side's depth over the first's)^2, c = (A + r B) / (1 + r), d = sqrt(r) |A - B| / (1 + r).
 */
export function placeEye(drawing: MarkedDrawing, vanishing: Vanishing, horizon: number): Axis {
  const { view, sides } = vanishing;
  const { cvp, distanceMm } = byBearings([...sightedOf(drawing, vanishing), ...squareSides(vanishing)]);
  if (distanceMm !== null) return { cvp, distanceMm };
  const { rectangle } = drawing;
  if (!rectangle?.corners.every(([, z]) => z < horizon)) return { cvp, distanceMm: null };
  const depth = depthsOf(rectangle.corners, horizon);
  if (view?.kind === "two-point") {
    const [A, B] = sides;
    if (A === null || B === null) return { cvp, distanceMm: null };
    if (cvp !== null) {
      const square = (A - cvp) * (cvp - B);
      return { cvp, distanceMm: square > 0 ? Math.sqrt(square) : null };
    }
    if (rectangle.proportion === null) return { cvp, distanceMm: null };
    const r = ((rectangle.proportion * depth.second) / depth.first) ** 2;
    return { cvp: (A + r * B) / (1 + r), distanceMm: (Math.sqrt(r) * Math.abs(A - B)) / (1 + r) };
  }
  if (view?.kind !== "one-point" || rectangle.proportion === null) return { cvp, distanceMm: null };
  const across = acrossOf(rectangle.corners, horizon, view.firstIsAcross);
  const away = view.firstIsAcross ? depth.second : depth.first;
  const ratio = view.firstIsAcross ? rectangle.proportion : 1 / rectangle.proportion;
  return { cvp, distanceMm: away > 0 ? across / ratio / away : null };
}

function sightedOf({ parallels }: MarkedDrawing, { meetings, sighted }: Vanishing): readonly Sighted[] {
  return sighted.flatMap(({ group, X }) => {
    const [bearingDeg, meeting] = [parallels[group]?.bearingDeg ?? null, meetings[group]];
    if (bearingDeg === null || X === null || meeting?.kind !== "point") return [];
    // Of 90 degrees the cotangent is 0 only but for rounding.
    const cot = bearingDeg === 90 ? 0 : 1 / Math.tan((bearingDeg * Math.PI) / 180);
    return [{ X, variance: meeting.spread.xx, cot }];
  });
}

/** The sides of a rectangle that run square to the plaster line, when the others run along it. */
function squareSides({ view, sides, pairs }: Vanishing): readonly Sighted[] {
  if (view?.kind !== "one-point") return [];
  const away = view.firstIsAcross ? 1 : 0;
  const [X, meeting] = [sides[away], pairs?.[away].meeting];
  return X !== null && meeting?.kind === "point" ? [{ X, variance: meeting.spread.xx, cot: 0 }] : [];
}

/** Weighed least squares of X = c + d cot over the bearings; c alone where all of them are square. */
function byBearings(sighted: readonly Sighted[]): Axis {
  const total = sighted.reduce((sum, { variance }) => sum + 1 / variance, 0);
  if (!(total > 0)) return { cvp: null, distanceMm: null };
  const mean = (of: (one: Sighted) => number) => sighted.reduce((sum, one) => sum + of(one) / one.variance, 0) / total;
  const [X, cot] = [mean((one) => one.X), mean((one) => one.cot)];
  const spread = mean((one) => (one.cot - cot) ** 2);
  if (!sighted.some((one) => Math.abs(one.cot - (sighted[0] as Sighted).cot) > SAME_BEARING))
    return { cvp: Math.abs(cot) < SAME_BEARING ? X : null, distanceMm: null };
  const d = mean((one) => (one.X - X) * (one.cot - cot)) / spread;
  return d > 0 ? { cvp: X - d * cot, distanceMm: d } : { cvp: null, distanceMm: null };
}

type Corners = readonly [DrawingPlace, DrawingPlace, DrawingPlace, DrawingPlace];

/** How much farther one end of a side is than the other, in eye heights over d: means of 1 / (h - Z) along both sides of a pair. */
function depthsOf(corners: Corners, horizon: number): { readonly first: number; readonly second: number } {
  const [a, b, c, d] = corners.map(([, z]) => 1 / (horizon - z)) as [number, number, number, number];
  return { first: Math.abs(b - a + c - d) / 2, second: Math.abs(c - b + d - a) / 2 };
}

/** Length of the sides that run along the plaster line, in eye heights: the mean of both. */
function acrossOf([a, b, c, d]: Corners, horizon: number, firstIsAcross: boolean): number {
  const span = (p: DrawingPlace, q: DrawingPlace) => Math.abs(q[0] - p[0]) / (horizon - (p[1] + q[1]) / 2);
  return firstIsAcross ? (span(a, b) + span(d, c)) / 2 : (span(b, c) + span(a, d)) / 2;
}
