"use client";

import { nameOfHandle } from "@/lib/draft/reshape/handle";
import { handlesOf } from "@/lib/draft/reshape/handles-of";
import { stepHandle } from "@/lib/draft/reshape/step-handle";
import type { StepDirection } from "@/lib/draft/snapping/step-point";
import type { Desk } from "../desk/desk";
import { useDeskStore } from "../desk/draft-context";
import { grippedThing, handleNamed, pullHandle, sayHandle } from "./grip";

/** The handles of what is chosen by keys. Each answers whether it did anything. */
export function useGripKeys() {
  const store = useDeskStore();
  return {
    /** Takes hold of the next handle, or the one before. */
    next: (by: 1 | -1): boolean => holdNext(store.getState(), by),
    /** Moves the handle that is held. */
    step: (direction: StepDirection, times: number, joins: boolean): boolean => {
      const desk = store.getState();
      const { plan } = desk.history.draft.exercise;
      const thing = grippedThing(desk);
      const held = thing && handleNamed(plan, thing, desk.grip);
      if (!thing || !held) return false;
      const to = stepHandle(plan, thing, held, { direction, grid: desk.grid, times });
      const pulled = to && pullHandle(desk.history.draft, thing, held, to, { grid: desk.grid, tolerance: 0 });
      if (pulled && desk.apply(pulled.edit, { joins }).ok) {
        desk.hold(pulled.handle);
        desk.say(pulled.said);
      }
      return true;
    },
    /** Takes the corner that is held out of its outline. */
    takeOut: (): boolean => takeCornerOut(store.getState()),
    letGo: (): boolean => {
      const desk = store.getState();
      if (desk.grip === null) return false;
      desk.hold(null);
      desk.say("Let go.");
      return true;
    },
  };
}

/** Takes hold of the next handle of what is chosen, or the one before; false where it has none. */
export function holdNext(desk: Desk, by: 1 | -1): boolean {
  const thing = grippedThing(desk);
  const { plan } = desk.history.draft.exercise;
  const handles = thing ? handlesOf(plan, thing) : [];
  if (!thing || handles.length === 0) return false;
  const here = handles.findIndex((handle) => nameOfHandle(handle) === desk.grip);
  const handle = handles[here < 0 ? (by > 0 ? 0 : handles.length - 1) : (here + by + handles.length) % handles.length];
  if (!handle) return false;
  desk.hold(nameOfHandle(handle));
  const corners = handles.filter(({ kind }) => kind === "corner").length;
  desk.say(`Held: ${sayHandle(handle, thing, corners)}.`);
  return true;
}

/** Takes the platform's corner that is held out of its outline; false where none is held. */
export function takeCornerOut(desk: Desk): boolean {
  const thing = grippedThing(desk);
  const held = thing && handleNamed(desk.history.draft.exercise.plan, thing, desk.grip);
  if (thing?.kind !== "platform" || held?.kind !== "corner") return false;
  if (desk.apply({ edit: "take-platform-corner", id: thing.id, corner: held.number }).ok) {
    desk.hold(null);
    desk.say(`Corner ${held.number} is taken out.`);
  }
  return true;
}
