import type { PlaneBox } from "@/lib/drawing/clear-lettering";
import { displayBounds } from "@/lib/drawing/display-bounds";
import type { DisplayList } from "@/lib/drawing/display-list";
import { drawPlan } from "@/lib/drawing/draw-plan";
import type { Exercise } from "@/lib/exercise/exercise";
import { exercisePoints, type ProjectedPoint } from "@/lib/exercise/exercise-points";
import { apronDrop } from "@/lib/exercise/inside-frame";
import { planeOf } from "./plane-of";
import { emptyPlan } from "./ruled-plan";
import type { Bounds } from "./view";

/** White paper round the drawings, millimetres. */
const MARGIN_MM = { side: 11, top: 7, foot: 19, planFoot: 9 } as const;
/** The rule's figures may hang under the apron's edge, and in a small pane they are several times their size on paper. */
const FIGURES_MM = 13;
/** A named point keeps this much paper round it. */
const POINT_ROOM_MM = 8;
/** So does every line drawn on the plan. */
const EDGE_ROOM_MM = 2;
/** A plan to be read back keeps room for its letters where they must be so many times their size on paper to be legible. */
const LETTERS_LARGER = 2;
/** Where a plan to be read back must show what lies past the stage, it goes on past the back wall by this share of the depth. */
const BEYOND_BACK_WALL = 0.25;

export type SheetBounds = { readonly picture: Bounds; readonly plan: Bounds };

/** What each drawing must show: the opening and the stage, and every point of the set, with white paper round them. */
export function sheetBounds(exercise: Exercise): SheetBounds {
  const mm = exercise.scaleRatio / 1000;
  const { opening } = exercise.stage;
  const half = opening.width / 2;
  const points = [...exercisePoints(exercise).values()];
  const asked = new Set(exercise.task.marks);
  const picture = cover(
    {
      left: -half - MARGIN_MM.side * mm,
      right: half + MARGIN_MM.side * mm,
      bottom: Math.min(-MARGIN_MM.foot * mm, apronDrop(exercise.stage, exercise.viewer) - FIGURES_MM * mm),
      top: opening.height + MARGIN_MM.top * mm,
    },
    points.flatMap((point) => (point.picture && asked.has(point.name) ? [point.picture] : [])),
    POINT_ROOM_MM * mm,
  );
  const plan = planeOf(exercise) === "plan" ? boundsToRead(exercise, points) : boundsOfPlan(exercise, points);
  return { picture, plan: aboutCentreLine(plan) };
}

function boundsOfPlan(exercise: Exercise, points: readonly ProjectedPoint[]): Bounds {
  const places = points.map((point): [number, number] => [point.at[0], point.at[1]]);
  return cover(stageBounds(exercise, drawPlan(exercise)), places, (EDGE_ROOM_MM * exercise.scaleRatio) / 1000);
}

/** The stage's box, and every line drawn on the plan, with white paper at the foot. */
function stageBounds({ stage, scaleRatio }: Exercise, plan: DisplayList): Bounds {
  const mm = scaleRatio / 1000;
  const half = stage.opening.width / 2;
  const box = { left: -half, right: half, bottom: -stage.apron - MARGIN_MM.planFoot * mm, top: stage.depth };
  return cover(box, cornersOf(displayBounds(strokesOf(plan), scaleRatio)), EDGE_ROOM_MM * mm);
}

/**
 * Of a plan that is read back, nothing that is still to be read may show in its size: it is the stage's box, or, where
 * something asked lies outside that, all that the eye sees through the opening.
 */
function boundsToRead(exercise: Exercise, points: readonly ProjectedPoint[]): Bounds {
  const { stage, viewer, task, scaleRatio } = exercise;
  const large = { ...exercise, scaleRatio: scaleRatio * LETTERS_LARGER };
  const box = cover(stageBounds(exercise, []), cornersOf(displayBounds(emptyPlan(large), large.scaleRatio)), 0);
  const room = (POINT_ROOM_MM * scaleRatio) / 1000;
  const marked = points.flatMap(({ name, at }): [number, number][] =>
    task.marks.includes(name) || task.given.includes(name) ? [[at[0], at[1]]] : [],
  );
  const inside = (bounds: Bounds) => {
    const grown = cover(bounds, marked, room);
    return (["left", "right", "bottom", "top"] as const).every((side) => grown[side] === bounds[side]);
  };
  if (inside(box)) return box;
  const deep = stage.depth * (1 + BEYOND_BACK_WALL);
  const seen = [-1, 1].map((side): [number, number] => [
    viewer.offset + ((side * stage.opening.width) / 2 - viewer.offset) * (1 + deep / viewer.distance),
    deep,
  ]);
  return cover(cover(box, seen, 0), marked, room);
}

/** Both drawings as wide as the wider of the two, so that one stands over the other. */
export function sameWidth({ picture, plan }: SheetBounds): SheetBounds {
  const left = Math.min(picture.left, plan.left);
  const right = Math.max(picture.right, plan.right);
  return { picture: { ...picture, left, right }, plan: { ...plan, left, right } };
}

/** Lettering finds its room between the lines. */
function strokesOf(list: DisplayList): DisplayList {
  return list.filter((item) => item.kind === "stroke");
}

/** As much on either side, so that the centre line stands in the middle of its pane, over or under the picture's. */
function aboutCentreLine(bounds: Bounds): Bounds {
  const half = Math.max(-bounds.left, bounds.right);
  return { ...bounds, left: -half, right: half };
}

function cornersOf(box: PlaneBox | null): [number, number][] {
  return box
    ? [
        [box[0], box[1]],
        [box[2], box[3]],
      ]
    : [];
}

function cover(bounds: Bounds, points: readonly (readonly [number, number])[], room: number): Bounds {
  return points.reduce<Bounds>(
    (grown, [x, y]) => ({
      left: Math.min(grown.left, x - room),
      right: Math.max(grown.right, x + room),
      bottom: Math.min(grown.bottom, y - room),
      top: Math.max(grown.top, y + room),
    }),
    bounds,
  );
}
