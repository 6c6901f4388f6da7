"use client";

import { Press } from "@/app/_parts/press";
import { ZoomPresses } from "@/app/_sheet/zoom-presses";
import { GRID_STEPS } from "@/lib/draft/snapping/step-point";
import { printLength } from "@/lib/measure/print-length";
import { printScale } from "@/lib/measure/scale";
import { useDesk, useDeskStore, useExercise } from "../desk/draft-context";
import { isUnderWay } from "../hand/hand";
import { Where } from "../live/where";

type Props = { readonly picture: "out" | "away"; readonly onPicture: (picture: "out" | "away") => void };

/** Under the plan: its scale, where the pencil is held, the steps it goes by, what was done undone, and how near it is looked at. */
export function PlanRow({ picture, onPicture }: Props) {
  const { units, scale } = useExercise();
  const store = useDeskStore();
  const grid = useDesk((desk) => desk.grid);
  const mayUndo = useDesk(
    ({ history, kept, hand }) => history.past.length > 0 || kept?.mayUndo === true || isUnderWay(hand),
  );
  const mayRedo = useDesk(({ history, kept }) => history.future.length > 0 || kept?.mayRedo === true);
  return (
    <>
      <Where otherwise={`Plan ${printScale(scale)}`} />
      <div className="draft-row">
        <Press weight="small" disabled={!mayUndo} onClick={() => store.getState().undo()}>
          Undo
        </Press>
        <Press weight="small" disabled={!mayRedo} onClick={() => store.getState().redo()}>
          Redo
        </Press>
        <Press
          weight="small"
          className="draft-narrow-only"
          aria-pressed={picture === "out"}
          onClick={() => onPicture(picture === "out" ? "away" : "out")}
        >
          Picture
        </Press>
        <label className="draft-steps">
          <span className="small-lettering">Steps of</span>
          <select
            className="look-list"
            value={String(grid)}
            onChange={(event) => store.getState().setGrid(Number(event.target.value))}
          >
            {GRID_STEPS[units].map((step) => (
              <option key={step} value={String(step)}>
                {printLength(step, units)}
              </option>
            ))}
          </select>
        </label>
        <ZoomPresses plane="plan" />
      </div>
    </>
  );
}
