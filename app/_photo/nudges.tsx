"use client";

import { useState } from "react";
import { Press } from "@/app/_parts/press";
import { COMPASS, type Compass, NUDGE_STEPS_MM, type NudgeStep } from "@/app/_sheet/constrain";
import { capital } from "@/lib/plan/first-letter";

/** Moves what is on hand without dragging: four presses and the size of their step. */
export function Nudges({ onNudge }: { readonly onNudge: (toward: Compass, step: NudgeStep) => void }) {
  const [step, setStep] = useState<NudgeStep>("plain");
  return (
    <fieldset className="check-nudges">
      <legend className="aloud">Move it by small steps</legend>
      {COMPASS.map((toward) => (
        <Press key={toward} weight="small" onClick={() => onNudge(toward, step)}>
          {capital(toward)}
        </Press>
      ))}
      <label className="nudge-by">
        by{" "}
        <select className="look-list" value={step} onChange={(event) => setStep(event.target.value as NudgeStep)}>
          {Object.entries(NUDGE_STEPS_MM).map(([each, mm]) => (
            <option key={each} value={each}>
              {mm} mm
            </option>
          ))}
        </select>
      </label>
    </fieldset>
  );
}
