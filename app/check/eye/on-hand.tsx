"use client";

import { Press } from "@/app/_parts/press";
import { Nudges } from "@/app/_photo/nudges";
import type { Compass, NudgeStep } from "@/app/_sheet/constrain";
import { useEye, useEyeRoom } from "./eye-context";
import { type EyeWork, type Grip, markOfGrip, spotOf } from "./eye-work";

type Props = { readonly work: EyeWork; readonly nudge: (toward: Compass, step: NudgeStep) => void };

/** The handle on hand: what to do with it now, and what else can be done. */
export function OnHand({ work, nudge }: Props) {
  const { store } = useEyeRoom();
  const selected = useEye((eye) => eye.selected);
  const earlier = useEye((eye) => eye.earlier.length);
  const { goOn, remove, undo } = store.getState();
  const takeBack = earlier > 0 && (
    <Press weight="small" onClick={undo}>
      Take back
    </Press>
  );
  if (selected === null)
    return (
      <div className="eye-hand">
        <p role="status">Add something below, or press a handle on the picture to move it.</p>
        {takeBack && <div className="check-presses">{takeBack}</div>}
      </div>
    );
  const isSet = spotOf(work, selected) !== null;
  return (
    <div className="eye-hand" data-set={isSet}>
      <p role="status">
        {isSet ? `On hand: ${sayGrip(work, selected)}.` : `Press on the picture: ${sayGrip(work, selected)}.`}
      </p>
      <div className="check-presses">
        <Press weight="small" onClick={goOn}>
          Next handle
        </Press>
        <Press weight="small" onClick={remove}>
          Remove {sayMark(markOfGrip(selected))}
        </Press>
        {takeBack}
      </div>
      {isSet && <Nudges onNudge={nudge} />}
    </div>
  );
}

function sayMark(id: string): string {
  return id === "F" ? "the rectangle" : id === "L" ? "the length" : id;
}

function sayGrip({ length }: EyeWork, grip: Grip): string {
  const id = markOfGrip(grip);
  const end = Number(grip.slice(id.length + 1));
  if (id === "F") return `corner ${end + 1} of the rectangle`;
  if (id === "L" && length?.lies === "upright") return `the ${end === 0 ? "foot" : "top"} of the known length`;
  return `${id === "L" ? "the known length" : id}, ${end === 0 ? "one end" : "the other end"}`;
}
