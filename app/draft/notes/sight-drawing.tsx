import { useMemo } from "react";
import { StillDrawing } from "@/app/_sheet/still-drawing";
import { drawHidden } from "@/lib/draft/sense/sightlines/draw-hidden";
import { drawSight } from "@/lib/draft/sense/sightlines/draw-sight";
import type { Sight } from "@/lib/draft/sense/sightlines/sight";
import { displayBounds } from "@/lib/drawing/display-bounds";
import type { DisplayItem } from "@/lib/drawing/display-list";
import { drawPlan } from "@/lib/drawing/draw-plan";
import type { Exercise } from "@/lib/exercise/exercise";

/** The plan with a whole house before it is drawn so small, one in so much: its letters would be dots. */
const SMALL_RATIO = 200;
const PX_PER_MM = 2.4;
const MARGIN_MM = 4;

/** The ground plan with the house before it, and over it what one seat sees. */
export function SightDrawing({ exercise, sight }: { readonly exercise: Exercise; readonly sight: Sight }) {
  const small = useMemo(() => ({ ...exercise, scaleRatio: SMALL_RATIO }), [exercise]);
  const plan = useMemo(() => drawPlan(small).filter(isLine), [small]);
  const over = useMemo(
    () => [...drawHidden(sight, exercise.plan, SMALL_RATIO), ...drawSight(sight, SMALL_RATIO)],
    [sight, exercise],
  );
  const list = useMemo(() => [...plan, ...over], [plan, over]);
  const box = displayBounds(list, SMALL_RATIO);
  if (!box) return null;
  const margin = (MARGIN_MM * SMALL_RATIO) / 1000;
  const bounds = {
    left: box[0] - margin,
    bottom: box[1] - margin,
    right: box[2] + margin,
    top: box[3] + margin,
  };
  const label = `The plan from above, and what is seen of it from this seat. ${sight.remarks.map(({ say }) => say).join(" ")}`;
  return (
    <div className="sight-drawing">
      <StillDrawing list={list} bounds={bounds} scaleRatio={SMALL_RATIO} pxPerMm={PX_PER_MM} label={label} />
      <p className="draft-note">
        Blue: what is seen. Hatched in red: what is seen offstage. Hatched along a wall: what of it is not seen. The
        plan you draw on shows the same while Notes are open.
      </p>
    </div>
  );
}

function isLine({ kind }: DisplayItem): boolean {
  return kind === "stroke";
}
