"use client";

import type { LengthUnits } from "@/lib/measure/length";
import { FOOT_SCALES, METRIC_SCALES, printScale } from "@/lib/measure/scale";
import type { Stage } from "@/lib/stage/stage";
import { useDesk, useDeskStore, useExercise } from "../desk/draft-context";
import { useApply } from "../desk/use-apply";
import { ChoiceField, LengthField, TextField } from "../fields/fields";
import { firstGrid, usualMeasures } from "../hand/measures";
import { BringHere } from "../kept/bring-here";
import { EyeFields } from "./eye-fields";

const UNIT_WORDS: Readonly<Record<LengthUnits, string>> = { "ft-in": "Feet and inches", m: "Metres" };
/** The scale that a plan takes up with other units. */
const FIRST_SCALE: Readonly<Record<LengthUnits, string>> = { "ft-in": "1/4in=1ft", m: "1:50" };
const RAKE_WORDS = "Write level, or a rise in a run, like 1 in 24.";

/** The stage, the sheet and the eye: what comes before anything is drawn, and can be changed at any time. */
export function StageDrawer() {
  const { stage, units, scale } = useExercise();
  const empty = useDesk((desk) => desk.history.draft.exercise.plan.corners.size === 0);
  const apply = useApply();
  const store = useDeskStore();
  const set = (change: Partial<Stage>) => apply({ edit: "set-stage", stage: { ...stage, ...change } });
  const setOpening = (change: Partial<Stage["opening"]>) => set({ opening: { ...stage.opening, ...change } });
  const measureIn = (next: LengthUnits) => {
    if (apply({ edit: "set-sheet", units: next, scale: FIRST_SCALE[next] }) !== null) return;
    store.getState().setGrid(firstGrid(next));
    store.getState().setMeasures(usualMeasures(next));
  };
  const usual: readonly string[] = units === "ft-in" ? FOOT_SCALES : METRIC_SCALES;
  const scales = usual.includes(scale) ? usual : [scale, ...usual];
  return (
    <>
      {empty && <BringHere />}
      <h2 className="lettering">Stage</h2>
      <div className="draft-fields">
        <ChoiceField label="Measured in" words={UNIT_WORDS} order={["ft-in", "m"]} value={units} onChoice={measureIn} />
        <ChoiceField
          label="Scale"
          words={Object.fromEntries(scales.map((each) => [each, printScale(each)]))}
          order={scales}
          value={scale}
          onChoice={(next) => apply({ edit: "set-sheet", units, scale: next })}
        />
        <LengthField
          label="Opening, wide"
          metres={stage.opening.width}
          onLength={(width) => positive(width, "The opening") ?? setOpening({ width })}
        />
        <LengthField
          label="Opening, high"
          metres={stage.opening.height}
          onLength={(height) => positive(height, "The opening") ?? setOpening({ height })}
        />
        <LengthField
          label="Depth to the back wall"
          metres={stage.depth}
          onLength={(depth) => positive(depth, "The stage") ?? set({ depth })}
        />
        <LengthField
          label="Apron"
          metres={stage.apron}
          onLength={(apron) => (apron < 0 ? "An apron is 0 or more deep." : set({ apron }))}
        />
        <TextField
          label="Rake"
          value={sayRake(stage.rake)}
          onWrite={(text) => {
            const rake = readRake(text);
            return rake === null ? RAKE_WORDS : set({ rake });
          }}
          note="level, or a rise in a run: 1 in 24"
        />
      </div>
      <EyeFields />
    </>
  );
}

function positive(length: number, what: string): string | null {
  return length > 0 ? null : `${what} needs a size above 0.`;
}

function sayRake(rake: number): string {
  return rake === 0 ? "level" : `1 in ${Math.round(100 / rake) / 100}`;
}

function readRake(text: string): number | null {
  const plain = text.trim().toLowerCase();
  if (plain === "level" || plain === "0") return 0;
  const run = Number(/^1\s*(?:in|:)\s*(\d+(?:\.\d+)?)$/.exec(plain)?.[1] ?? Number.NaN);
  return run > 0 ? 1 / run : null;
}
