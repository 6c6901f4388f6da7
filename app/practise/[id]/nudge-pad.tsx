"use client";

import { Press } from "@/app/_parts/press";
import { COMPASS, NUDGE_STEPS_MM, type NudgeStep } from "@/app/_sheet/constrain";
import type { useMark } from "@/app/_sheet/use-mark";
import { capital } from "@/lib/plan/first-letter";

const STEP_WORDS: Readonly<Record<NudgeStep, string>> = {
  fine: `${NUDGE_STEPS_MM.fine} mm`,
  plain: `${NUDGE_STEPS_MM.plain} mm`,
  coarse: `${NUDGE_STEPS_MM.coarse} mm`,
};

/** Moves the mark without dragging: four presses and the size of their step on paper. */
export function NudgePad({
  mark,
  size,
  onSize,
}: {
  readonly mark: ReturnType<typeof useMark>;
  readonly size: NudgeStep;
  readonly onSize: (size: NudgeStep) => void;
}) {
  return (
    <fieldset className="nudge-pad">
      <legend className="aloud">Move the mark by small steps</legend>
      {COMPASS.map((toward) => (
        <Press key={toward} weight="small" onClick={() => mark.nudge(toward, size)}>
          {capital(toward)}
        </Press>
      ))}
      <label className="nudge-step">
        <span>by</span>
        <select className="look-list" value={size} onChange={(event) => onSize(event.target.value as NudgeStep)}>
          {Object.entries(STEP_WORDS).map(([step, words]) => (
            <option key={step} value={step}>
              {words}
            </option>
          ))}
        </select>
      </label>
    </fieldset>
  );
}
