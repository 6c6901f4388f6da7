import type { SheetPlace } from "../../sheet/place-drawings";
import type { PencilCorner, PencilLine } from "../drawing-reading";
import type { ExpectedDrawing, Way } from "./expected-drawing";
import type { Cross } from "./find-crosses";
import { lineCoverage } from "./line-coverage";

/**
 * What it costs to take corners for asked points: about minus twice the logarithm of how likely such a drawing is, with tails so long
 * that one wild point does not carry the others away. All figures were set by trial on drawings of the course's exercises.
 */
export type MatchCosts = {
  /** A point without a corner, of which nothing is drawn. */
  readonly missing: number;
  /** Of a point taken to be at a corner, its lines aside. */
  point(point: number, corner: number, way: Way): number;
  /** Of an expected line between two places, its ends' own costs aside. `corner` is null for a given point. */
  line(line: number, from: number | null, to: number | null, way: Way): number;
};

/** What else of the page was seen. */
export type Seen = {
  readonly crosses: readonly Cross[];
  /** The share of the straight way between two places of the sheet that print hides. */
  hidden(a: SheetPlace, b: SheetPlace): number;
};

const MISSING = 5;
/** The usual distance of a corner from where the way has it, millimetres: of the true drawing, and of a habit's, which fits closer. */
const OFF_TRUE_MM = 3;
const OFF_HABIT_MM = 2;
const PER_OFF = 2;
/** A point that lines should meet at, read from a small cross; one of which no line is expected, read from anything else. */
const CROSS_FOR_CORNER = 1.5;
const CORNER_FOR_CROSS = 3.5;
/** Where lines only cross, or a lone end is where several lines should meet. */
const ONLY_CROSSING = 0.5;
const ONLY_END = 1;
/** An expected line of which nothing is drawn, and how much more of it than is drawn counts as nothing. */
const NOT_DRAWN = 3.5;
/** A line that is drawn speaks for both its ends. */
const DRAWN = 1.5;
/** Of a line that runs under print this share of what is not seen is forgiven. */
const FORGIVEN = 0.7;
/** A line that stops short of its point by more than the first, to the second at most, and what a millimetre of it costs. */
const SHORT_FREE_MM = 0.5;
const SHORT_MOST_MM = 2.5;
const PER_SHORT_MM = 0.7;
const TURNED_RAD = 0.2;
const PER_TURN = 1.3;
const LONGER_LOG = 0.35;
const PER_LONGER = 0.7;
/** A shorter line says no direction, millimetres. */
const NO_DIRECTION_MM = 1.2;
/** Two points of one line at one corner. */
const SAME_CORNER = 6;
/** A cross is made of two strokes no longer than this that cross near their middles and stand square to each other, about. */
const CROSS_MM = 7.5;
const CROSS_SINE = 0.75;
const CROSS_MIDDLE = 0.22;
const CROSS_OFF_MM = 0.7;
/** Of an arm of a cross this much would be seen, millimetres, were not such a share of it hidden. */
const ARM_SEEN_MM = 1.5;
const ARM_HIDDEN = 0.4;
/** A cross with an arm fainter than this share of the usual stroke may be something else. */
const CLEAR_CROSS = 0.8;
const UNCLEAR_CROSS = 3;
/** Two arms of a cross that meet. */
const HALF_CROSS = 1;

export function matchCosts(
  expected: ExpectedDrawing,
  lines: readonly PencilLine[],
  corners: readonly PencilCorner[],
  { crosses: found, hidden }: Seen,
): MatchCosts {
  const crosses = corners.map((corner) => crossCost(corner, lines, { crosses: found, hidden }));
  const count = expected.asked.map((_, i) => expected.lines.filter(({ from, to }) => from === i || to === i).length);
  const known = new Map<number, { readonly covered: number; readonly short: number }>();
  const placeOf = (point: number, corner: number | null): SheetPlace =>
    corner === null
      ? (expected.given[point - expected.asked.length] as SheetPlace)
      : (corners[corner] as PencilCorner).at;
  const wayPlace = (point: number, way: Way): SheetPlace =>
    way.places[point] ?? (expected.given[point - expected.asked.length] as SheetPlace);
  const fitOf = (p: SheetPlace, q: SheetPlace) => {
    const { share, short } = lineCoverage(lines, p, q);
    const covered = share + (1 - share) * FORGIVEN * hidden(p, q);
    const length = apart(p, q);
    const cost = (from: SheetPlace, to: SheetPlace, mm: number) => {
      const most = Math.min(mm, SHORT_MOST_MM);
      if (share === 0 || most <= SHORT_FREE_MM) return 0;
      const seen: SheetPlace = [
        from[0] + ((to[0] - from[0]) * mm) / length,
        from[1] + ((to[1] - from[1]) * mm) / length,
      ];
      return PER_SHORT_MM * (most - SHORT_FREE_MM) * (1 - hidden(from, seen));
    };
    return { covered, short: cost(p, q, short[0]) + cost(q, p, short[1]) };
  };
  return {
    missing: MISSING,
    point: (point, corner, way) => {
      const at = (corners[corner] as PencilCorner).at;
      const meant = way.places[point] as SheetPlace;
      const off = apart(at, meant) / (way.true ? OFF_TRUE_MM : OFF_HABIT_MM);
      const kind = (corners[corner] as PencilCorner).kind;
      const wanted = count[point] as number;
      const cross = crosses[corner] as number;
      const look =
        wanted === 0
          ? cross
          : cross < HALF_CROSS
            ? CROSS_FOR_CORNER
            : kind === "crossing"
              ? ONLY_CROSSING
              : kind === "end" && wanted > 1
                ? ONLY_END
                : 0;
      return PER_OFF * Math.log1p((off * off) / 2) + look;
    },
    line: (line, from, to, way) => {
      const { from: a, to: b } = expected.lines[line] as { from: number; to: number };
      if (from !== null && from === to) return SAME_CORNER;
      const [p, q] = [placeOf(a, from), placeOf(b, to)];
      const key =
        (line * (corners.length + 1) + (from ?? corners.length)) * (corners.length + 1) + (to ?? corners.length);
      let fit = known.get(key);
      if (fit === undefined) {
        fit = fitOf(p, q);
        known.set(key, fit);
      }
      const [u, v] = [wayPlace(a, way), wayPlace(b, way)];
      return (
        NOT_DRAWN * (1 - fit.covered) -
        DRAWN * fit.covered +
        fit.short +
        shapeCost([q[0] - p[0], q[1] - p[1]], [v[0] - u[0], v[1] - u[1]])
      );
    },
  };
}

/** What it costs to take a place for a cross: nothing where two short strokes cross, most where only long lines meet. */
function crossCost(corner: PencilCorner, lines: readonly PencilLine[], { crosses: found, hidden }: Seen): number {
  if (isCross(corner, lines)) return 0;
  // What looks like a cross where long lines run through it is a crossing of theirs.
  const near = isSmall(corner, lines) ? found.filter(({ at }) => apart(at, corner.at) < CROSS_OFF_MM) : [];
  const unclear = Math.min(...near.map(({ clear }) => UNCLEAR_CROSS * Math.max(0, 1 - clear / CLEAR_CROSS)));
  return Math.min(CORNER_FOR_CROSS, unclear, isHalfCross(corner, lines, hidden) ? HALF_CROSS : CORNER_FOR_CROSS);
}

/** Two short strokes square to each other, of which print hides what lies beyond their meeting. */
function isHalfCross(
  { at, lines: through }: PencilCorner,
  lines: readonly PencilLine[],
  hidden: Seen["hidden"],
): boolean {
  const strokes = through
    .map((i) => lines[i] as PencilLine)
    .filter((stroke) => apart(stroke.from, stroke.to) <= CROSS_MM && isMiddleOrHidden(at, stroke, hidden));
  return strokes.some((one, i) => strokes.slice(i + 1).some((other) => sineBetween(one, other) >= CROSS_SINE));
}

/** Whether a stroke goes on through a place, or would do so under print. */
function isMiddleOrHidden(at: SheetPlace, stroke: PencilLine, hidden: Seen["hidden"]): boolean {
  if (isMiddle(at, stroke)) return true;
  const [near, far] = [stroke.from, stroke.to].sort((a, b) => apart(a, at) - apart(b, at)) as [SheetPlace, SheetPlace];
  const long = apart(near, far);
  const beyond = (mm: number): SheetPlace => [
    at[0] + ((near[0] - far[0]) * mm) / long,
    at[1] + ((near[1] - far[1]) * mm) / long,
  ];
  return hidden(at, beyond(ARM_SEEN_MM)) >= ARM_HIDDEN;
}

/** Whether a corner's lines are all short, or there are none of them. */
function isSmall({ lines: through }: PencilCorner, lines: readonly PencilLine[]): boolean {
  return through.every((i) => {
    const { from, to } = lines[i] as PencilLine;
    return apart(from, to) <= 2 * CROSS_MM;
  });
}

/** How unlike a drawn line is to the one meant, in direction and length. */
function shapeCost(drawn: readonly [number, number], meant: readonly [number, number]): number {
  const [long, meantLong] = [Math.hypot(...drawn), Math.hypot(...meant)];
  if (long < NO_DIRECTION_MM || meantLong < NO_DIRECTION_MM) return 0;
  const sine = drawn[0] * meant[1] - drawn[1] * meant[0];
  const turn = Math.abs(Math.atan2(sine, drawn[0] * meant[0] + drawn[1] * meant[1]));
  // Of a short line a millimetre is a large turn.
  const usual = TURNED_RAD + 1 / meantLong;
  const longer = Math.log(long / meantLong) / (LONGER_LOG + 1 / meantLong);
  return PER_TURN * Math.log1p((turn / usual) ** 2) + PER_LONGER * Math.log1p(longer ** 2);
}

/** Whether a place is a small cross of two short strokes. */
function isCross({ at, lines: through }: PencilCorner, lines: readonly PencilLine[]): boolean {
  const strokes = through.map((i) => lines[i] as PencilLine).filter(({ from, to }) => apart(from, to) <= CROSS_MM);
  return strokes.some((one, i) =>
    strokes.slice(i + 1).some((other) => {
      return sineBetween(one, other) >= CROSS_SINE && [one, other].every((stroke) => isMiddle(at, stroke));
    }),
  );
}

function sineBetween(one: PencilLine, other: PencilLine): number {
  const [ux, uy] = [one.to[0] - one.from[0], one.to[1] - one.from[1]];
  const [vx, vy] = [other.to[0] - other.from[0], other.to[1] - other.from[1]];
  return Math.abs(ux * vy - uy * vx) / (Math.hypot(ux, uy) * Math.hypot(vx, vy));
}

function isMiddle(at: SheetPlace, { from, to }: PencilLine): boolean {
  const length = apart(from, to);
  const share = ((at[0] - from[0]) * (to[0] - from[0]) + (at[1] - from[1]) * (to[1] - from[1])) / length ** 2;
  return share > CROSS_MIDDLE && share < 1 - CROSS_MIDDLE;
}

function apart(a: SheetPlace, b: SheetPlace): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1]);
}
