import { fitHorizon, type Horizon, type LevelGroup, placeOnHorizon } from "./fit-horizon";
import { fitMeeting, type Meeting } from "./fit-meeting";
import type { DrawingPlace, KnownLength, MarkedDrawing } from "./marked-drawing";
import { type Axis, placeEye, type Sides } from "./place-eye";
import { type Pairs, pairsOfSides, type RectangleView, readRectangle } from "./read-rectangle";

/** The figures of an eye that a drawing tells, each null where it does not. */
export type EyeFigures = {
  /** Height of the horizon, millimetres of the drawing. */
  readonly horizon: number | null;
  /** How far right the centre vanishing point lies on it, millimetres. */
  readonly cvp: number | null;
  /** From the paper to the eye, at the drawing's own size, millimetres. */
  readonly distanceMm: number | null;
  /** Of the eye above the floor, metres. */
  readonly eyeHeight: number | null;
  /** From the plaster line to the eye, metres. */
  readonly distance: number | null;
  /** From the rectangle's nearest corner to the eye, square to the picture plane, metres. */
  readonly fromRectangle: number | null;
  /** The rectangle's first side over its second, as this eye sees it drawn. */
  readonly proportion: number | null;
};

export type Reading = {
  readonly figures: EyeFigures;
  /** Where each group of parallels meets by itself, in their order. */
  readonly meetings: readonly Meeting[];
  readonly rectangle: RectangleView | null;
  readonly horizon: Horizon | null;
  readonly pairs: Pairs | null;
  /** Where the rectangle's two pairs of sides vanish, millimetres along the horizon. */
  readonly sides: Sides;
};

/** A place nearer to the horizon than this many sigmas of the drawing may as well lie over it: it is no place of the floor. */
const UNDER_HORIZON = 1;

/**
 * What a drawing tells of its eye, without how sure that is. `kept` is a reading of all but the same drawing: then what
 * kind of lines they are is taken from there, so that figures change smoothly with the places.
 */
export function readFigures(drawing: MarkedDrawing, kept?: Reading): Reading {
  const { sigmaMm: sigma, parallels } = drawing;
  const meetings =
    kept?.meetings ??
    parallels.map(
      ({ lines, bearingDeg }): Meeting =>
        bearingDeg === 0 ? { kind: "unknown" } : fitMeeting(lines.map((ends) => ({ ends, sigma }))),
    );
  const pairs = drawing.rectangle && pairsOfSides(drawing.rectangle, sigma, kept?.pairs);
  const rectangle = kept ? kept.rectangle : drawing.rectangle && pairs && readRectangle(drawing.rectangle, pairs);
  const groups = parallels.map(
    ({ lines }, i): LevelGroup => ({
      lines: lines.map((ends) => ({ ends, sigma })),
      meeting: meetings[i] as Meeting,
    }),
  );
  const known = groups.flatMap((group, i) => (group.meeting.kind === "unknown" ? [] : [{ group, i }]));
  const seen = rectangle?.kind === "one-point" || rectangle?.kind === "two-point" ? (pairs ?? []) : [];
  const horizon = fitHorizon([...known.map(({ group }) => group), ...seen], kept?.horizon ?? undefined);
  const place = (index: number) => placeOnHorizon(horizon?.angles[index] ?? 0);
  const away = (index: 0 | 1) =>
    seen.length === 0 || (rectangle?.kind === "one-point" && rectangle.firstIsAcross === (index === 0))
      ? null
      : place(known.length + index);
  const sides: Sides = [away(0), away(1)];
  const sighted = known.map(({ i }, index) => ({ group: i, X: place(index) }));
  const height = horizon?.height ?? null;
  const eye = height === null ? null : placeEye(drawing, { meetings, sighted, view: rectangle, sides, pairs }, height);
  return { figures: scaleFigures(drawing, height, eye, rectangle), meetings, rectangle, horizon, pairs, sides };
}

function scaleFigures(
  drawing: MarkedDrawing,
  horizon: number | null,
  eye: Axis | null,
  view: RectangleView | null,
): EyeFigures {
  const cvp = eye?.cvp ?? null;
  const distanceMm = eye?.distanceMm ?? null;
  const eyeHeight = horizon === null ? null : heightBy(drawing, horizon, cvp, distanceMm);
  const { length, rectangle } = drawing;
  const perMetre =
    length?.lies === "plaster line" ? Math.abs(length.ends[1][0] - length.ends[0][0]) / length.metres : null;
  const nearest = rectangle && horizon !== null ? Math.max(...rectangle.corners.map(([, z]) => horizon - z)) : null;
  return {
    horizon,
    cvp,
    distanceMm,
    eyeHeight,
    distance: distanceMm !== null && perMetre ? distanceMm / perMetre : null,
    fromRectangle:
      eyeHeight !== null && distanceMm !== null && nearest !== null && nearest > 0
        ? (eyeHeight * distanceMm) / nearest
        : null,
    proportion:
      rectangle &&
      (view?.kind === "one-point" || view?.kind === "two-point") &&
      horizon !== null &&
      cvp !== null &&
      distanceMm !== null
        ? proportionOf(rectangle.corners, horizon, cvp, distanceMm)
        : null,
  };
}

/** A place of the floor, in eye heights right of the CVP's foot and before the eye: ((X - c) / (h - Z), d / (h - Z)). */
function onFloor([X, Z]: DrawingPlace, horizon: number, cvp: number, distanceMm: number): readonly [number, number] {
  return [(X - cvp) / (horizon - Z), distanceMm / (horizon - Z)];
}

function floorLength(a: DrawingPlace, b: DrawingPlace, horizon: number, cvp: number, distanceMm: number): number {
  const [p, q] = [onFloor(a, horizon, cvp, distanceMm), onFloor(b, horizon, cvp, distanceMm)];
  return Math.hypot(q[0] - p[0], q[1] - p[1]);
}

function proportionOf(
  [a, b, c, d]: readonly [DrawingPlace, DrawingPlace, DrawingPlace, DrawingPlace],
  horizon: number,
  cvp: number,
  distanceMm: number,
): number {
  const side = (p: DrawingPlace, q: DrawingPlace) => floorLength(p, q, horizon, cvp, distanceMm);
  return (side(a, b) + side(d, c)) / (side(b, c) + side(a, d));
}

/** The eye's height from the one known length, metres; null where that length does not tell it. */
function heightBy(
  { length, sigmaMm }: MarkedDrawing,
  horizon: number,
  cvp: number | null,
  distanceMm: number | null,
): number | null {
  if (!length) return null;
  const [a, b] = length.ends;
  const under = (place: DrawingPlace) => horizon - place[1] > UNDER_HORIZON * sigmaMm;
  if (!under(a)) return null;
  if (length.lies === "upright") return b[1] > a[1] ? (length.metres * (horizon - a[1])) / (b[1] - a[1]) : null;
  if (!under(b)) return null;
  if (isAcross(length, sigmaMm)) {
    const middle = horizon - (a[1] + b[1]) / 2;
    return b[0] !== a[0] ? (length.metres * middle) / Math.abs(b[0] - a[0]) : null;
  }
  if (cvp === null || distanceMm === null) return null;
  const eyeHeights = floorLength(a, b, horizon, cvp, distanceMm);
  return eyeHeights > 0 ? length.metres / eyeHeights : null;
}

/** Level lines of the floor are as far away at both ends: their length needs no distance of the eye. */
export function isAcross({ ends: [a, b], lies }: KnownLength, sigma: number): boolean {
  return lies === "plaster line" || Math.abs(a[1] - b[1]) <= 2 * Math.SQRT2 * sigma;
}
