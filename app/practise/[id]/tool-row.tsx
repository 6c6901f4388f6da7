"use client";

import { useStore } from "zustand";
import { Press } from "@/app/_parts/press";
import { viewOfPane, ZOOM_STEP } from "@/app/_sheet/pane-state";
import { planeOf } from "@/app/_sheet/plane-of";
import { useSheet } from "@/app/_sheet/sheet-context";
import { type Plane, pxPerMm } from "@/app/_sheet/view";
import { printScale } from "@/lib/measure/scale";
import { usePractice, usePracticeRoom } from "./practice-context";
import { zoomAboutMark } from "./zoom-about-mark";

/** A screen's millimetre by the definition of the CSS pixel: 96 to the inch. */
const CSS_PX_PER_MM = 96 / 25.4;

export type Tools = {
  readonly straightedge: boolean;
  readonly magnifier: boolean;
  readonly onStraightedge: (on: boolean) => void;
  readonly onMagnifier: (on: boolean) => void;
  /** On a narrow sheet the drawing that is not marked can be put away. */
  readonly otherAway: boolean;
  readonly onOtherAway: (away: boolean) => void;
};

/** Under the drawing that is marked: its title and scale, and the tools, each in a word. */
export function ToolRow({ straightedge, magnifier, onStraightedge, onMagnifier, otherAway, onOtherAway }: Tools) {
  const { exercise, store } = usePracticeRoom();
  const { views } = useSheet();
  const figure = usePractice((practice) => practice.attempt.figure);
  const plane = planeOf(exercise);
  const zoom = (times: number) => zoomAboutMark(views, plane, store.getState().attempt.pending, times);
  const mayDraw = exercise.task.tools.includes("straightedge");
  return (
    <div className="tool-row">
      <p className="drawing-title">
        <span className="lettering">
          {plane === "plan" ? "Plan" : "Picture"} {printScale(exercise.scale)}
        </span>{" "}
        <ShownAt plane={plane} />
      </p>
      <Press weight="small" className="narrow-only" aria-pressed={!otherAway} onClick={() => onOtherAway(!otherAway)}>
        {plane === "plan" ? "Picture" : "Plan"}
      </Press>
      {mayDraw && (
        <Press weight="small" aria-pressed={straightedge} onClick={() => onStraightedge(!straightedge)}>
          Straightedge
        </Press>
      )}
      <Press weight="small" aria-pressed={magnifier} onClick={() => onMagnifier(!magnifier)}>
        Magnifier
      </Press>
      <Press weight="small" aria-pressed={figure} onClick={() => store.getState().stand(!figure)}>
        Figure
      </Press>
      <Press weight="small" onClick={() => zoom(ZOOM_STEP)}>
        Closer
      </Press>
      <Press weight="small" onClick={() => zoom(1 / ZOOM_STEP)}>
        Further
      </Press>
      <Press weight="small" onClick={() => views.getState().whole(plane)}>
        Whole
      </Press>
    </div>
  );
}

/** How large the screen shows the paper. */
function ShownAt({ plane }: { readonly plane: Plane }) {
  const { views, scaleRatio } = useSheet();
  const times = useStore(views, (state) => (pxPerMm(viewOfPane(state[plane]), scaleRatio) / CSS_PX_PER_MM).toFixed(1));
  return <span className="shown-at">shown {times} × paper</span>;
}
