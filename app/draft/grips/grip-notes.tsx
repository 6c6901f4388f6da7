"use client";

import { Press } from "@/app/_parts/press";
import type { Thing } from "@/lib/draft/draft";
import { handlesOf } from "@/lib/draft/reshape/handles-of";
import { useDesk, useDeskStore, useExercise } from "../desk/draft-context";
import { handleNamed, sayHandle } from "./grip";
import { holdNext, takeCornerOut } from "./use-grip-keys";

const HOW: Readonly<Partial<Record<Thing["kind"], string>>> = {
  platform: "Drag its squares on the plan; the lozenges between them make a new corner.",
  stair: "Drag its squares on the plan for its width and where it faces, its triangles for its treads.",
  furniture: "Drag its squares on the plan to size it, the arc before it to turn it.",
  column: "Drag the square at its rim on the plan.",
  masking: "Drag its ends on the plan.",
  opening: "Drag its jambs on the plan for its width.",
};

/** How a thing is reshaped by hand, which handle is held, and what can be done with that. */
export function GripNotes({ thing }: { readonly thing: Thing }) {
  const store = useDeskStore();
  const { plan } = useExercise();
  const held = handleNamed(
    plan,
    thing,
    useDesk((desk) => desk.grip),
  );
  const how = HOW[thing.kind];
  if (!how) return null;
  const corners = handlesOf(plan, thing).filter(({ kind }) => kind === "corner").length;
  return (
    <div className="grip-notes">
      <p className="draft-note">
        {how} By keys, on the plan: Enter takes hold of one after another, arrows move it
        {thing.kind === "platform" ? ", Delete takes a corner out" : ""}, Escape lets go.
      </p>
      <div className="draft-presses">
        <Press
          weight="small"
          onClick={() => {
            holdNext(store.getState(), 1);
            document.querySelector<HTMLElement>(".draft-plan .draft-keys")?.focus({ preventScroll: true });
          }}
        >
          {held ? "Hold the next" : "Take hold of it by keys"}
        </Press>
        {held?.kind === "corner" && (
          <Press weight="small" onClick={() => takeCornerOut(store.getState())}>
            Take corner {held.number} out
          </Press>
        )}
      </div>
      {held && <p className="draft-note">Held: {sayHandle(held, thing, corners)}.</p>}
    </div>
  );
}
