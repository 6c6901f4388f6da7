"use client";

import { useMemo } from "react";
import { AtPoint } from "@/app/_sheet/end-marks";
import { StillDrawing } from "@/app/_sheet/still-drawing";
import { DEMONSTRATION_MARGINS, demonstrationBoxes } from "@/lib/drawing/demonstration/demonstration-boxes";
import type { DemonstrationStep } from "@/lib/drawing/demonstration/demonstration-step";
import { startDemonstrationDrawing } from "@/lib/drawing/demonstration/draw-demonstration";
import { fitDrawing } from "@/lib/drawing/demonstration/fit-drawing";
import type { Exercise } from "@/lib/exercise/exercise";

/** The room that each small drawing is laid out for, pixels, and what a millimetre of its letters is there. */
const ROOM = { width: 460, height: 340, letterUnit: 4 } as const;

/** A step of a demonstration, small: its picture, or its plan where that is what the step is about. */
export function NextDrawing({
  exercise,
  steps,
  step,
}: {
  readonly exercise: Exercise;
  readonly steps: readonly DemonstrationStep[];
  readonly step: DemonstrationStep;
}) {
  const layout = useMemo(() => {
    const boxes = demonstrationBoxes(exercise, steps);
    return {
      picture: fitDrawing(boxes.picture, DEMONSTRATION_MARGINS.picture, ROOM),
      plan: fitDrawing(boxes.plan, DEMONSTRATION_MARGINS.plan, ROOM),
    };
  }, [exercise, steps]);
  const draw = useMemo(() => startDemonstrationDrawing(exercise, layout), [exercise, layout]);
  const plane = isOfPlan(step, exercise) ? "plan" : "picture";
  const { sheet, set, construction, lit } = draw(step)[plane];
  const [left, bottom, right, top] = layout[plane].window;
  return (
    <StillDrawing
      list={[...sheet, ...set, ...construction]}
      bounds={{ left, bottom, right, top }}
      scaleRatio={layout[plane].scaleRatio}
      pxPerMm={ROOM.letterUnit}
      label={`${step.title}. ${step.part}.`}
    >
      {lit && (
        <AtPoint at={lit} scaleRatio={layout[plane].scaleRatio}>
          <circle r={7} className="lit-point" />
        </AtPoint>
      )}
    </StillDrawing>
  );
}

/** Whether a step is about the plan: where a point is asked, or, of a picture that is read back, where it is set down. */
function isOfPlan({ kind, shown }: DemonstrationStep, { task }: Exercise): boolean {
  const own = task.kind === "picture-to-plan" ? "set-down" : "place";
  return kind === own || shown.parts.length === 0;
}
