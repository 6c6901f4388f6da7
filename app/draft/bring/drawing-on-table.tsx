"use client";

import { useMemo, useState } from "react";
import { useStore } from "zustand";
import { Press } from "@/app/_parts/press";
import { ZOOM_STEP } from "@/app/_sheet/pane-state";
import { useSheet } from "@/app/_sheet/sheet-context";
import { openCatching } from "@/lib/draft/bring/pointing/catch-place";
import { layBoard } from "./board";
import { BringSheet } from "./bring-sheet";
import { PointingSteps } from "./pointing-steps";
import { createPointing } from "./pointing-store";
import { PointingSurface } from "./pointing-surface";
import type { ShownDrawing } from "./worker/messages";

/** A drawing that was read, to be pointed at. */
export function DrawingOnTable({ drawing }: { readonly drawing: ShownDrawing }) {
  const { bounds, layers, pieces, unit } = drawing;
  const board = useMemo(() => layBoard(bounds), [bounds]);
  const catching = useMemo(() => openCatching(pieces, (layer) => layers[layer]?.hidden === false), [pieces, layers]);
  const [pointing] = useState(() => createPointing(unit.kind !== "stage"));
  return (
    <BringSheet board={board}>
      <div className="draft-sheet bring-sheet ruled">
        <div className="bring-drawing">
          <PointingSurface pointing={pointing} board={board} catching={catching} label="The drawing that was brought">
            {layers.map(({ name, hidden, path }) =>
              hidden ? null : <path key={name} d={path} className="stroke w-thin" />,
            )}
          </PointingSurface>
          <ZoomRow />
        </div>
        <div className="draft-content bring-side">
          <PointingSteps pointing={pointing} units="ft-in" />
        </div>
      </div>
    </BringSheet>
  );
}

function ZoomRow() {
  const { views } = useSheet();
  const whole = useStore(views, ({ plan }) => plan.factor === 1);
  return (
    <div className="draft-row">
      <Press weight="small" onClick={() => views.getState().zoom("plan", ZOOM_STEP)}>
        Closer
      </Press>
      <Press weight="small" disabled={whole} onClick={() => views.getState().zoom("plan", 1 / ZOOM_STEP)}>
        Further
      </Press>
      <Press weight="small" disabled={whole} onClick={() => views.getState().whole("plan")}>
        Whole
      </Press>
    </div>
  );
}
