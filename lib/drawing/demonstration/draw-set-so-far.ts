import type { Exercise } from "../../exercise/exercise";
import type { ProjectedPoint } from "../../exercise/exercise-points";
import type { Edge } from "../../plan/edge";
import { shortName } from "../../plan/say-point";
import type { PicturePoint } from "../../stage/frame";
import { letterName, type PlaneBox } from "../clear-lettering";
import type { DisplayItem, DisplayList, DrawingPoint, Stroke } from "../display-list";
import { drawEdges, type EdgeStyle, OWN_LINES } from "../draw-edges";
import { makeStroke } from "../make-stroke";
import { cutStroke, isInBox } from "./cut-to-box";

/** Arms of the small cross at a point that no line runs to, mm. */
const CROSS_MM = 1.2;
/** A line shorter than this is a point, metres. */
const NO_LENGTH_M = 1e-6;

export type SetSoFar = {
  readonly exercise: Pick<Exercise, "plan" | "scaleRatio">;
  readonly points: ReadonlyMap<string, ProjectedPoint>;
  readonly edges: readonly Edge[];
  /** Where the points that are on the sheet lie on the drawing, metres. */
  readonly places: ReadonlyMap<string, DrawingPoint>;
  /** Whose lines stand out. */
  readonly fresh: string | null;
  /** What names keep clear of. */
  readonly over: DisplayList;
  /** Where the drawing ends, as the opening ends a picture that is seen through it. */
  readonly box?: PlaneBox;
};

/**
 * The set as far as the points on a drawing make it, metres of that drawing: the lines between them, those of the fresh point extra thick, a cross
 * at each point that has none, and the corners' names. On the picture openings are dressed; on the plan an upright is a point, and is left out.
 */
export function drawSetSoFar(plane: "picture" | "plan", set: SetSoFar): DisplayList {
  const { exercise, points, places, fresh, over } = set;
  const older = new Map([...places].filter(([name]) => name !== fresh));
  const known = new Set(linesOf(plane, set, older, OWN_LINES).map(({ id }) => id));
  const lines = linesOf(plane, set, places, OWN_LINES).map(
    (stroke): Stroke => (known.has(stroke.id) ? stroke : { ...stroke, weight: "extra-thick" }),
  );
  const items = [...lines, ...crosses(set)].flatMap((stroke) => (set.box ? cutStroke(stroke, set.box) : [stroke]));
  const drawn = { items: [...over, ...items], scaleRatio: exercise.scaleRatio };
  const down = plane === "picture" ? -1 : 1;
  const names: DisplayItem[] = [];
  for (const [name, at] of places) {
    const point = points.get(name);
    if (point?.group !== "corner" || point.role !== "foot" || (set.box && !isInBox(at, set.box))) continue;
    const clear = { ...drawn, items: [...drawn.items, ...names] };
    names.push(letterName(`name.${name}`, at, [at[0] < 0 ? -1 : 1, down], shortName(point), clear));
  }
  return [...items, ...names];
}

function linesOf(
  plane: "picture" | "plan",
  { exercise, points, edges }: SetSoFar,
  places: SetSoFar["places"],
  style: EdgeStyle,
): readonly Stroke[] {
  // Either drawing has its places in metres, across and up.
  const across = places as ReadonlyMap<string, PicturePoint>;
  if (plane === "picture") return drawEdges(edges, across, style, { plan: exercise.plan, points });
  return drawEdges(edges, across, style).filter(
    ({ points: [from, to] }) => from && to && Math.hypot(from[0] - to[0], from[1] - to[1]) > NO_LENGTH_M,
  );
}

function crosses({ exercise, edges, places }: SetSoFar): Stroke[] {
  const arm = (CROSS_MM * exercise.scaleRatio) / 1000;
  const joined = new Set(edges.flatMap(({ from, to }) => (places.has(from) && places.has(to) ? [from, to] : [])));
  return [...places].flatMap(([name, [x, y]]) =>
    joined.has(name)
      ? []
      : [
          makeStroke(`cross.${name}.across`, [
            [x - arm, y],
            [x + arm, y],
          ]),
          makeStroke(`cross.${name}.up`, [
            [x, y - arm],
            [x, y + arm],
          ]),
        ],
  );
}
