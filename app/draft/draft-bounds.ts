import type { SheetBounds } from "@/app/_sheet/sheet-bounds";
import type { Bounds } from "@/app/_sheet/view";
import { outlineThings } from "@/lib/draft/snapping/outline-things";
import type { Exercise } from "@/lib/exercise/exercise";
import { apronDrop } from "@/lib/exercise/inside-frame";

/** White paper round the picture, and round the plan, millimetres. */
const MARGIN_MM = { side: 9, top: 8, foot: 17, plan: 9 } as const;
/** Wings to draw masking in, as a share of the opening's width on either side; and room upstage of the back wall, of the depth. */
const WINGS = 0.22;
const UPSTAGE = 0.06;
/** What lies past that makes room in steps of this, metres, so that the paper seldom changes under the pencil. */
const STEP_M = 1;

/** What either drawing shows when it is shown whole: the stage with its wings, and whatever is drawn past them. */
export function draftBounds({ stage, viewer, plan, scaleRatio }: Exercise): SheetBounds {
  const mm = scaleRatio / 1000;
  const { width, height } = stage.opening;
  const half = width / 2;
  const picture: Bounds = {
    left: -half - MARGIN_MM.side * mm,
    right: half + MARGIN_MM.side * mm,
    bottom: Math.min(-MARGIN_MM.foot * mm, apronDrop(stage, viewer) - MARGIN_MM.foot * mm * 0.7),
    top: height + MARGIN_MM.top * mm,
  };
  const places = outlineThings(plan).flatMap(({ ring }) => ring);
  const farthest = Math.max(half * (1 + 2 * WINGS), ...places.map(([x]) => past(Math.abs(x), half * (1 + 2 * WINGS))));
  const back = stage.depth * (1 + UPSTAGE);
  const front = stage.apron + MARGIN_MM.plan * mm;
  return {
    picture,
    plan: {
      left: -farthest,
      right: farthest,
      bottom: -Math.max(front, ...places.map(([, y]) => past(-y, front))),
      top: Math.max(back, ...places.map(([, y]) => past(y, back))),
    },
  };
}

function past(reach: number, room: number): number {
  return reach <= room ? room : room + Math.ceil((reach - room) / STEP_M + 0.2) * STEP_M;
}
