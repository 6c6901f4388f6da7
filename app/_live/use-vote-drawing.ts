"use client";

import { useEffect, useLayoutEffect, useMemo } from "react";
import { useStore } from "zustand";
import { useSheet } from "@/app/_sheet/sheet-context";
import type { Bounds, Plane, PxSize } from "@/app/_sheet/view";
import { DEMONSTRATION_MARGINS, demonstrationBoxes } from "@/lib/drawing/demonstration/demonstration-boxes";
import type { DemonstrationStep } from "@/lib/drawing/demonstration/demonstration-step";
import { startDemonstrationDrawing } from "@/lib/drawing/demonstration/draw-demonstration";
import { type Fitted, fitDrawing } from "@/lib/drawing/demonstration/fit-drawing";
import { CAP_SHARE } from "@/lib/drawing/lettering-box";
import { LETTER_MM } from "@/lib/drawing/make-stroke";
import type { Exercise } from "@/lib/exercise/exercise";

const useBrowserLayoutEffect = typeof window === "undefined" ? useEffect : useLayoutEffect;
const ASSUMED: PxSize = { width: 390, height: 320 };

/** The two drawings of the step that everyone places, laid out for their panes with letters of so many pixels. */
export function useVoteDrawing(exercise: Exercise, step: DemonstrationStep, letterPx: number) {
  const { views } = useSheet();
  const pictureSize = useStore(views, ({ picture }) => picture.size);
  const planSize = useStore(views, ({ plan }) => plan.size);
  const boxes = useMemo(() => demonstrationBoxes(exercise, [step]), [exercise, step]);
  const fitted = useMemo(() => {
    const letterUnit = (letterPx * CAP_SHARE) / LETTER_MM.note;
    const layInto = (plane: Plane, { width, height }: PxSize) =>
      fitDrawing(boxes[plane], DEMONSTRATION_MARGINS[plane], {
        ...(width > 0 && height > 0 ? { width, height } : ASSUMED),
        letterUnit,
      });
    return { picture: layInto("picture", pictureSize), plan: layInto("plan", planSize) };
  }, [boxes, letterPx, pictureSize, planSize]);
  useBrowserLayoutEffect(() => {
    views.getState().lay("never", boundsOf(fitted.picture), boundsOf(fitted.plan));
  }, [views, fitted]);
  const drawn = useMemo(() => startDemonstrationDrawing(exercise, fitted)(step), [exercise, fitted, step]);
  return { fitted, drawn };
}

/** Which of the two is marked. */
export function markedPlane({ task }: Pick<Exercise, "task">): Plane {
  return task.kind === "picture-to-plan" ? "plan" : "picture";
}

function boundsOf({ window: [left, bottom, right, top] }: Fitted): Bounds {
  return { left, bottom, right, top };
}
