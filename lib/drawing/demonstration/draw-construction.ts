import type { LineStep, MeasureStep, Step } from "../../construction/step";
import { between } from "../../geometry/vector";
import { circlePoints } from "../arc-points";
import { clearest, type PlaneBox } from "../clear-lettering";
import type { DisplayItem, DisplayList, DrawingPoint, Stroke } from "../display-list";
import { shiftBeside } from "../lettering-box";
import { LETTER_MM, makeLettering, makeStroke, type StrokeStyle } from "../make-stroke";
import { cutSegment, isInBox } from "./cut-to-box";

/** Lines run past their last point as a drafter's do; level and upright ones, which end nowhere, farther, mm. */
const OVERRUN_MM = { through: 2.5, open: 6 } as const;
const TICK_MM = 1.3;
const CROSSING_MM = 1.2;
/** Where along a line its number may stand, shares, and how far beside it, mm. */
const NUMBER_PLACES = [0.5, 0.4, 0.6, 0.3, 0.7, 0.2] as const;
const NUMBER_CLEAR_MM = 0.7;
/** Directions, degrees, and reaches in which a mark's number may stand. */
const MARK_TURNS_DEG = [-90, -50, -130, 0, 180, 50, 130, 90] as const;
const MARK_REACH_MM = 3;
/** A line shorter than this has no direction, metres. */
const NO_LENGTH_M = 1e-9;

export type ConstructionOptions = {
  readonly drawn: number;
  readonly scaleRatio: number;
  /** What of the sheet is seen, for numbers to stay within, metres. */
  readonly window: PlaneBox;
  /** What is on the sheet already, for the numbers to keep clear of. */
  readonly over: DisplayList;
};

/**
 * A construction as far as it is drawn, in blue, picture metres: its lines from end to end and a little past, its marks with
 * ticks, its crossings with circles, each with the number that the sentences call it by. The step on hand is thick.
 */
export function drawConstruction(steps: readonly Step[], options: ConstructionOptions): DisplayList {
  const { drawn, scaleRatio, over } = options;
  const mm = scaleRatio / 1000;
  const strokes = steps.slice(0, drawn).flatMap((step, i): Stroke[] => {
    const style: StrokeStyle = { pencil: "blue", weight: i === drawn - 1 ? "thick" : "thin" };
    const id = `construction.${i + 1}`;
    if (step.do === "line") {
      const [from, to] = endsOf(step, i + 1, steps, mm);
      return [makeStroke(id, [from, to], style)];
    }
    if (step.do === "measure") {
      return [makeStroke(id, [startOf(step, steps), step.at], style), makeStroke(`${id}.tick`, tick(step, mm), style)];
    }
    return [makeStroke(`${id}.crossing`, circlePoints(step.at, CROSSING_MM * mm), { ...style, closed: true })];
  });
  const numbers: DisplayItem[] = [];
  steps.slice(0, drawn).forEach((step, i) => {
    const items = [...over, ...strokes, ...numbers];
    const places = step.do === "line" ? beside(step, i + 1) : around(step.at, i + 1);
    const inside = places.filter(({ at }) => isInBox(at, options.window));
    if (inside.length > 0) numbers.push(clearest(inside, { items, scaleRatio }));
  });
  return [...strokes, ...numbers];

  function beside(step: LineStep, number: number) {
    const ends = cutSegment(endsOf(step, number, steps, mm), options.window);
    if (!ends) return [];
    const [from, to] = ends;
    const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
    if (length < NO_LENGTH_M) return [];
    const normal: DrawingPoint = [-(to[1] - from[1]) / length, (to[0] - from[0]) / length];
    const heightMm = LETTER_MM.note;
    return NUMBER_PLACES.flatMap((share) =>
      ([1, -1] as const).map((side) =>
        makeLettering(`construction.${number}.number`, between(from, to, share), String(number), {
          pencil: "blue",
          heightMm,
          shiftMm: shiftBeside([side * normal[0], side * normal[1]], String(number), heightMm, NUMBER_CLEAR_MM),
        }),
      ),
    );
  }

  function around(at: DrawingPoint, number: number) {
    const heightMm = LETTER_MM.note;
    return MARK_TURNS_DEG.map((turn) => {
      const angle = (turn * Math.PI) / 180;
      const shiftMm = [MARK_REACH_MM * Math.cos(angle), MARK_REACH_MM * Math.sin(angle) - heightMm / 2] as const;
      return makeLettering(`construction.${number}.number`, at, String(number), { pencil: "blue", heightMm, shiftMm });
    });
  }
}

/** A line from the first to the last of the points it is drawn for: those it goes through and the crossings on it. */
function endsOf(
  { through, toward }: LineStep,
  number: number,
  steps: readonly Step[],
  mm: number,
): readonly [DrawingPoint, DrawingPoint] {
  const [a, b] = through;
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  if (length < NO_LENGTH_M) return [a, b];
  const along: DrawingPoint = [(b[0] - a[0]) / length, (b[1] - a[1]) / length];
  const open = toward === "upright" || toward === "level";
  const shares = [
    0,
    ...(open ? [] : [length]),
    ...steps.flatMap((step) =>
      step.do === "meet" && step.lines.includes(number)
        ? [(step.at[0] - a[0]) * along[0] + (step.at[1] - a[1]) * along[1]]
        : [],
    ),
  ];
  const past = (open ? OVERRUN_MM.open : OVERRUN_MM.through) * mm;
  const at = (share: number): DrawingPoint => [a[0] + along[0] * share, a[1] + along[1] * share];
  return [at(Math.min(...shares) - past), at(Math.max(...shares) + past)];
}

/** Where a measure starts: a mark before it, or the foot of the centre line. */
function startOf(step: MeasureStep, steps: readonly Step[]): DrawingPoint {
  const start = typeof step.from === "number" ? steps[step.from - 1] : null;
  return start && start.do !== "line" ? start.at : [0, 0];
}

/** Where a measure ends: a tick across the line it was laid off on. */
function tick({ at: [X, Z], on }: MeasureStep, mm: number): readonly DrawingPoint[] {
  const [across, up] = on === "upright" ? [TICK_MM * mm, 0] : [0, TICK_MM * mm];
  return [
    [X - across, Z - up],
    [X + across, Z + up],
  ];
}
