import type { LengthUnits } from "../../measure/length";
import { missInSigmas } from "./drawn-line";
import type { EyeRefusal, Figure, FigureName, WhoseEye } from "./eye-answer";
import { type Reading, readFigures } from "./eye-figures";
import { fitMeeting } from "./fit-meeting";
import { countPlaces, type MarkedDrawing, movePlaces } from "./marked-drawing";
import { REFUSALS, sayTold, sayUntold } from "./say-whose-eye";

/** Uprights and horizons are refused when they miss by more sigmas than this: a hand does so once in ten thousand drawings. */
const CLEARLY = 4;

/** A figure is not told when its standard deviation is above this share of it; of the CVP's place, of the eye's distance. */
const CANNOT_TELL = 0.5;

/** Places are moved by this share of their sigma to see how the figures change. */
const NUDGE = 0.05;

/**
 * Whose eye drew this? From what is marked in any drawing with an upright picture plane, laid straight: the horizon, the
 * centre vanishing point, and how far off and how high the eye is, each with its standard deviation (to first order, from
 * `sigmaMm` at every marked place) or untold. Nothing is taken for granted: a rectangle seen square on gives horizon and
 * CVP but no distance unless its proportion is known, a turned one the half circle on which the eye stands, and only a
 * known length gives a scale.
 */
export function whoseEye(drawing: MarkedDrawing, units: LengthUnits): WhoseEye {
  const { sigmaMm, length, rectangle: marked } = drawing;
  for (const [what, size] of Object.entries({ sigmaMm, metres: length?.metres, proportion: marked?.proportion }))
    if (size !== undefined && size !== null && !(size > 0 && Number.isFinite(size)))
      throw new Error(`A marked drawing's ${what} is a finite number above 0, not ${size}.`);
  const reading = readFigures(drawing);
  const why = refusalOf(drawing, reading);
  if (why) return { kind: "refused", why, meetings: reading.meetings, say: REFUSALS[why] };
  const variances = variancesOf(drawing, reading);
  const { figures: values } = reading;
  const figure = (name: FigureName, most = CANNOT_TELL * Math.abs(values[name] ?? 0)): Figure | null => {
    const [value, give] = [values[name], Math.sqrt(variances[name])];
    return value !== null && give <= most ? { value, give } : null;
  };
  const figures = {
    horizon: figure("horizon", Number.POSITIVE_INFINITY),
    cvp: figure("cvp", values.distanceMm === null ? Number.POSITIVE_INFINITY : CANNOT_TELL * values.distanceMm),
    distanceMm: figure("distanceMm"),
    eyeHeight: figure("eyeHeight"),
    distance: figure("distance"),
    fromRectangle: figure("fromRectangle"),
    proportion: figure("proportion"),
  };
  const { rectangle, sides } = reading;
  const [first, second] = sides;
  const half =
    rectangle?.kind === "two-point" && values.distanceMm === null && first !== null && second !== null
      ? Math.abs(first - second) / 2
      : null;
  return {
    kind: "told",
    figures,
    meetings: reading.meetings,
    rectangle,
    sidesVanishAt: sides,
    distanceAtMostMm: half,
    told: sayTold(figures, drawing, units),
    untold: sayUntold(figures, values, drawing, rectangle, half),
  };
}

function refusalOf(drawing: MarkedDrawing, { rectangle, horizon }: Reading): EyeRefusal | null {
  const { uprights, sigmaMm: sigma } = drawing;
  const lines = uprights.map((ends) => ({ ends, sigma }));
  const lean = Math.sqrt(lines.reduce((sum, line) => sum + missInSigmas(line, [0, 1, 0]) ** 2, 0) / lines.length);
  if (lean > CLEARLY) return fitMeeting(lines).kind === "point" ? "uprights meet" : "drawing is turned";
  if (rectangle?.kind === "no outline") return "rectangle is no outline";
  if (horizon === null) return null;
  if (horizon.misfit !== null && horizon.misfit > CLEARLY) return "no one horizon";
  const over = drawing.rectangle?.corners.some(([, z]) => z >= horizon.height - sigma);
  return over ? "rectangle over the horizon" : null;
}

/** Variance of each figure when every marked place slips by itself; infinite where a slip takes the figure away. */
function variancesOf(drawing: MarkedDrawing, reading: Reading): Record<FigureName, number> {
  const sums = { ...ZEROES };
  const { figures } = reading;
  const step = NUDGE * drawing.sigmaMm;
  const moved = (index: number, right: number, up: number) =>
    readFigures(
      movePlaces(drawing, (place, i) => (i === index ? [place[0] + right, place[1] + up] : place)),
      reading,
    ).figures;
  for (let i = 0; i < countPlaces(drawing); i++)
    for (const [right, up] of [
      [step, 0],
      [0, step],
    ] as const) {
      const [more, less] = [moved(i, right, up), moved(i, -right, -up)];
      for (const name of NAMES) {
        if (figures[name] === null) continue;
        const [a, b] = [more[name], less[name]];
        sums[name] += a === null || b === null ? Number.POSITIVE_INFINITY : ((a - b) / (2 * NUDGE)) ** 2;
      }
    }
  return sums;
}

const ZEROES: Readonly<Record<FigureName, number>> = {
  horizon: 0,
  cvp: 0,
  distanceMm: 0,
  eyeHeight: 0,
  distance: 0,
  fromRectangle: 0,
  proportion: 0,
};
const NAMES = Object.keys(ZEROES) as readonly FigureName[];
