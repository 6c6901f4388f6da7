"use client";

import { useMemo } from "react";
import { Press } from "@/app/_parts/press";
import { capital } from "@/lib/plan/first-letter";
import { useDesk, useDeskStore, useExercise } from "../desk/draft-context";
import { withThing } from "../desk/follow-chosen";
import { GripNotes } from "../grips/grip-notes";
import { isSameThing, keyOfThing } from "../hand/hand";
import { MoveForm } from "./move-form";
import { ThingForm } from "./thing-form";
import { listThings, sayThings } from "./thing-words";

/** Everything on the plan as a list to choose from, and what is chosen, to be changed. */
export function ThingsDrawer() {
  const { plan, units } = useExercise();
  const chosen = useDesk((desk) => desk.chosen);
  const trouble = useDesk((desk) => desk.trouble);
  const store = useDeskStore();
  const listed = useMemo(() => listThings(plan, units), [plan, units]);
  const [only] = chosen;
  return (
    <>
      <h2 className="notes-title">{chosen.length === 0 ? "What is on the plan" : capital(sayThings(chosen, plan))}</h2>
      {trouble && <p className="draft-wrong">{trouble}</p>}
      {only && chosen.length === 1 && <ThingForm key={keyOfThing(only)} thing={only} />}
      {only && chosen.length === 1 && <GripNotes thing={only} />}
      {chosen.length > 0 && <MoveForm chosen={chosen} />}
      {listed.length === 0 ? (
        <p>Nothing yet. Draw something first.</p>
      ) : (
        <fieldset className="draft-list">
          <legend className="small-lettering">Everything on the plan</legend>
          <div className="draft-presses">
            <Press weight="small" onClick={() => store.getState().choose(listed.map(({ thing }) => thing))}>
              Choose all
            </Press>
            <Press weight="small" disabled={chosen.length === 0} onClick={() => store.getState().choose([])}>
              Choose none
            </Press>
          </div>
          <ul>
            {listed.map(({ thing, words }) => (
              <li key={keyOfThing(thing)}>
                <label>
                  <input
                    type="checkbox"
                    checked={chosen.some((each) => isSameThing(each, thing))}
                    onChange={() => store.getState().choose(withThing(chosen, thing))}
                  />
                  <span>{words}</span>
                </label>
              </li>
            ))}
          </ul>
        </fieldset>
      )}
    </>
  );
}
