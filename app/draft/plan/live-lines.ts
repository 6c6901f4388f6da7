import { arrowHead } from "@/lib/drawing/arrow-head";
import type { DisplayItem, DisplayList, DrawingPoint } from "@/lib/drawing/display-list";
import { shiftBeside } from "@/lib/drawing/lettering-box";
import { LETTER_MM, makeLettering, makeStroke } from "@/lib/drawing/make-stroke";
import type { Exercise } from "@/lib/exercise/exercise";
import { between, distance, subtract, unit } from "@/lib/geometry/vector";
import { printLength } from "@/lib/measure/print-length";
import type { Opening, Wall } from "@/lib/plan/plan";
import { openingJambs, wallLine } from "@/lib/plan/wall-line";
import type { PlanPoint } from "@/lib/stage/frame";
import type { Aim } from "../desk/desk";
import { type Hand, lastPlace, placeOf } from "../hand/hand";

type Sheet = Pick<Exercise, "plan" | "units" | "scaleRatio">;

const BLUE = { pencil: "blue" } as const;
/** Dimension lines stand this far off what they measure, arrow heads are so long, millimetres of paper. */
const OFF_MM = 4.5;
const HEAD_MM = 1.8;
/** Shorter than this there is nothing to measure, metres. */
const NOTHING_M = 1e-4;
/** The arc of an angle, millimetres of paper; how finely it is drawn. */
const ARC_MM = 9;
const ARC_PIECES = 16;

/** A dimension between two places, on the side of `normal`, as drafters write it. */
function dimension(
  id: string,
  [from, to]: readonly [DrawingPoint, DrawingPoint],
  normal: DrawingPoint,
  { units, scaleRatio }: Sheet,
  offMm = OFF_MM,
): readonly DisplayItem[] {
  const length = distance(from, to);
  if (length < NOTHING_M) return [];
  const mm = scaleRatio / 1000;
  const off = ([x, y]: DrawingPoint, by: number): DrawingPoint => [x + normal[0] * by * mm, y + normal[1] * by * mm];
  const [a, b] = [off(from, offMm), off(to, offMm)];
  const head = Math.min(HEAD_MM * mm, length / 3);
  const text = printLength(length, units);
  const ticks =
    offMm > 0 ? [from, to].map((at, i) => makeStroke(`${id}.tick.${i}`, [off(at, 1), off(at, offMm + 1.5)], BLUE)) : [];
  return [
    ...ticks,
    makeStroke(id, [a, b], BLUE),
    makeStroke(`${id}.start`, arrowHead(b, a, head), BLUE),
    makeStroke(`${id}.end`, arrowHead(a, b, head), BLUE),
    makeLettering(`${id}.length`, between(a, b, 0.5), text, {
      ...BLUE,
      heightMm: LETTER_MM.note,
      shiftMm: shiftBeside(normal, text, LETTER_MM.note, 1),
    }),
  ];
}

/** The dimensions along a wall of an opening in it: to both its ends, and its own width, on the onstage side. */
export function openingDimensions(wall: Wall, opening: Pick<Opening, "at" | "width">, sheet: Sheet): DisplayList {
  const line = wallLine(sheet.plan, wall);
  if (!line) return [];
  const { start, end } = openingJambs(line, opening);
  const onstage: DrawingPoint = [-line.offstage[0], -line.offstage[1]];
  return [
    ...dimension("live.from", [line.from, start], onstage, sheet),
    ...dimension("live.width", [start, end], onstage, sheet),
    ...dimension("live.to", [end, line.to], onstage, sheet),
  ];
}

/** A wall's length, on its onstage side, where no name stands. */
export function wallDimension(wall: Wall, sheet: Sheet): DisplayList {
  const line = wallLine(sheet.plan, wall);
  if (!line) return [];
  return dimension(`live.${wall.id}`, [line.from, line.to], [-line.offstage[0], -line.offstage[1]], sheet);
}

/** What is being drawn, in blue: its lines where it is no wall yet, its lengths and its angle, and what the pencil has caught. */
export function liveLines(hand: Hand, aim: Aim | null, sheet: Sheet): DisplayList {
  const { plan } = sheet;
  if (hand.kind === "opening") {
    const wall = aim?.kind === "on-wall" ? plan.walls.find(({ id }) => id === aim.wall) : undefined;
    const made = wall?.openings.at(-1);
    return wall && made ? openingDimensions(wall, made, sheet) : [];
  }
  const at = aim?.kind === "place" ? aim.at : null;
  const guides = aim?.kind === "place" ? aim.guides : [];
  const caught = guides.map(({ from, to }, i) =>
    makeStroke(`live.guide.${i}`, [from, to], { ...BLUE, line: "hidden" }),
  );
  const corners = hand.kind === "walls" || hand.kind === "platform" ? cornersOf(hand, sheet) : [];
  const from = lastPlace(hand, plan);
  const run = [...corners, ...(at && from ? [...(corners.length === 0 ? [from] : []), at] : [])];
  return [
    ...caught,
    ...run.slice(1).flatMap((to, i) => {
      const start = run[i] as PlanPoint;
      const along = unit(subtract(to, start));
      if (!along) return [];
      return [
        makeStroke(`live.run.${i}`, [start, to], BLUE),
        ...dimension(`live.length.${i}`, [start, to], rightOf(along), sheet),
      ];
    }),
    ...(at && from ? angleMark(from, at, sheet) : []),
  ];
}

function cornersOf(hand: Extract<Hand, { readonly corners: unknown }>, { plan }: Sheet): readonly PlanPoint[] {
  return hand.corners.flatMap((corner): PlanPoint[] => {
    const place = placeOf(plan, corner);
    return place ? [place] : [];
  });
}

/** The side of a run that is onstage: walls are drawn from stage right round to stage left. */
function rightOf([dx, dy]: DrawingPoint): DrawingPoint {
  return [dy, -dx];
}

/** The angle of a line from straight across to stage left, counter-clockwise, with its arc. */
function angleMark(from: PlanPoint, to: PlanPoint, { scaleRatio }: Sheet): readonly DisplayItem[] {
  const run = subtract(to, from);
  const angle = Math.atan2(run[1], run[0]);
  const mm = scaleRatio / 1000;
  if (Math.hypot(...run) < 2 * ARC_MM * mm) return [];
  const on = (turn: number, r: number): DrawingPoint => [
    from[0] + r * mm * Math.cos(turn),
    from[1] + r * mm * Math.sin(turn),
  ];
  const arc = Array.from({ length: ARC_PIECES + 1 }, (_, i) => on((angle * i) / ARC_PIECES, ARC_MM));
  return [
    makeStroke("live.angle.zero", [from, on(0, ARC_MM + 3)], { ...BLUE, line: "hidden" }),
    makeStroke("live.angle", arc, BLUE),
    makeLettering("live.angle.words", on(angle / 2, ARC_MM + 3.5), sayAngle(angle), {
      ...BLUE,
      heightMm: LETTER_MM.note,
      shiftMm: [0, -LETTER_MM.note / 2],
    }),
  ];
}

/** An angle in degrees, to a tenth. */
export function sayAngle(radians: number): string {
  return `${Math.round((radians * 1800) / Math.PI) / 10}°`;
}
