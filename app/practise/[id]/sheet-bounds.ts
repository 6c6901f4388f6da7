import type { Bounds } from "@/app/_sheet/view";
import type { Exercise } from "@/lib/exercise/exercise";
import { exercisePoints } from "@/lib/exercise/exercise-points";

/** White paper round the drawings, millimetres. */
const MARGIN_MM = { side: 11, top: 7, foot: 16, planFoot: 9 } as const;
/** A named point keeps this much paper round it. */
const POINT_ROOM_MM = 8;

export type SheetBounds = { readonly picture: Bounds; readonly plan: Bounds };

/** What each drawing must show: the opening and the stage, and every point of the set, with white paper round them. */
export function sheetBounds(exercise: Exercise): SheetBounds {
  const mm = exercise.scaleRatio / 1000;
  const { opening, depth, apron } = exercise.stage;
  const half = opening.width / 2;
  const points = [...exercisePoints(exercise).values()];
  const asked = new Set(exercise.task.marks);
  const picture = cover(
    {
      left: -half - MARGIN_MM.side * mm,
      right: half + MARGIN_MM.side * mm,
      bottom: -MARGIN_MM.foot * mm,
      top: opening.height + MARGIN_MM.top * mm,
    },
    points.flatMap((point) => (point.picture && asked.has(point.name) ? [point.picture] : [])),
    POINT_ROOM_MM * mm,
  );
  const plan = cover(
    {
      left: -half - MARGIN_MM.side * mm,
      right: half + MARGIN_MM.side * mm,
      bottom: -apron - MARGIN_MM.planFoot * mm,
      top: depth + MARGIN_MM.top * mm,
    },
    points.map((point) => [point.at[0], point.at[1]]),
    POINT_ROOM_MM * mm,
  );
  return { picture, plan };
}

/** Both drawings as wide as the wider of the two, so that one stands over the other. */
export function sameWidth({ picture, plan }: SheetBounds): SheetBounds {
  const left = Math.min(picture.left, plan.left);
  const right = Math.max(picture.right, plan.right);
  return { picture: { ...picture, left, right }, plan: { ...plan, left, right } };
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
