import type { Exercise } from "../exercise/exercise";
import { between } from "../geometry/vector";
import { printLength } from "../measure/print-length";
import type { PlanPoint, StagePoint } from "../stage/frame";
import { arrowHead } from "./arrow-head";
import { clearest, type Drawn, type PlaneBox, planeBox } from "./clear-lettering";
import type { DisplayItem, DisplayList, DrawingPoint, Lettering } from "./display-list";
import { shiftBeside } from "./lettering-box";
import { LETTER_MM, makeLettering, makeStroke } from "./make-stroke";

/** A place this near a line needs no dimension from it, metres. */
const ON_LINE_M = 1e-6;
/** Length of a dimension's arrow heads, millimetres of paper. */
const HEAD_MM = 1.8;
const BLUE = { pencil: "blue" } as const;

/** Where along a dimension its number may stand, shares, best first. */
const NUMBER_PLACES = [0.5, 0.36, 0.64, 0.22, 0.78, 0.08] as const;
/**
 * How far off its dimension a number stands, millimetres of paper. Near it crosses a line rather than go away; only from
 * other letters, where the drawing is too small for all of them, does it go far.
 */
const NEAR_MM = [1, 3.5] as const;
const FAR_MM = [6, 9] as const;

/** Half the width of the mark that shows the point itself, millimetres of paper. */
const POINT_MM = 2.6;

export type PlaceOptions = {
  /** False where the student reads with the scale rule: the lines alone. */
  readonly numbers?: boolean;
  /** What is on the sheet already, for the numbers to keep clear of. */
  readonly over?: DisplayList;
};

/**
 * The two dimensions that place a point of the plan, in blue: square from the centre line, and square from the plaster
 * line. Plan metres. A dimension of no length is left out.
 *
 * Usage: `drawPlace(exercise, point.at, point.name, { over: plan })` over `plan = drawPlan(exercise)`, for the corner a step
 * asks for, where `task.dimensions` is `printed`.
 */
export function drawPlace(
  { units, scaleRatio }: Pick<Exercise, "units" | "scaleRatio">,
  [x, y]: PlanPoint | StagePoint,
  name: string,
  { numbers = true, over = [] }: PlaceOptions = {},
): DisplayList {
  const sheet = [...over, pointRoom([x, y])];
  const across = dimension("across", [0, y], [x, y], [0, y < 0 ? -1 : 1], sheet);
  const upstage = dimension("upstage", [x, 0], [x, y], [x < 0 ? -1 : 1, 0], [...sheet, ...across]);
  return [...across, ...upstage];

  function dimension(
    part: string,
    from: DrawingPoint,
    to: DrawingPoint,
    side: DrawingPoint,
    clearOf: DisplayList,
  ): DisplayItem[] {
    const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
    if (length < ON_LINE_M) return [];
    const id = `place.${name}.${part}`;
    const head = Math.min((HEAD_MM * scaleRatio) / 1000, length / 3);
    const lines = [
      makeStroke(id, [from, to], BLUE),
      makeStroke(`${id}.start`, arrowHead(to, from, head), BLUE),
      makeStroke(`${id}.end`, arrowHead(from, to, head), BLUE),
    ];
    return numbers ? [...lines, letterLength(id, [from, to], side, printLength(length, units), clearOf)] : lines;
  }

  function letterLength(
    id: string,
    [from, to]: readonly [DrawingPoint, DrawingPoint],
    side: DrawingPoint,
    text: string,
    clearOf: DisplayList,
  ): DisplayItem {
    const heightMm = LETTER_MM.note;
    const other: DrawingPoint = [-side[0], -side[1]];
    const placesAt = (far: readonly number[]) =>
      far.flatMap((clearMm) =>
        NUMBER_PLACES.flatMap((share) =>
          [side, other].map((toward) =>
            makeLettering(`${id}.length`, between(from, to, share), text, {
              ...BLUE,
              heightMm,
              shiftMm: shiftBeside(toward, text, heightMm, clearMm),
            }),
          ),
        ),
      );
    const sheet = { items: clearOf, scaleRatio };
    const near = clearest(placesAt(NEAR_MM), sheet);
    return isOverLettering(near, sheet) ? clearest(placesAt([...NEAR_MM, ...FAR_MM]), sheet) : near;
  }
}

/** The room of the mark at the point, told as a letter's, which no number may cover; never drawn. */
function pointRoom(at: DrawingPoint): DisplayItem {
  return makeLettering("place.point", at, "O", { heightMm: 2 * POINT_MM, shiftMm: [0, -POINT_MM] });
}

function isOverLettering(number: Lettering, { items, scaleRatio }: Drawn): boolean {
  const box = planeBox(number, scaleRatio);
  return items.some((item) => item.kind === "lettering" && boxesOverlap(box, planeBox(item, scaleRatio)));
}

function boxesOverlap(a: PlaneBox, b: PlaneBox): boolean {
  return a[0] < b[2] && b[0] < a[2] && a[1] < b[3] && b[1] < a[3];
}
