"use client";

import type { KeyboardEvent } from "react";
import { moveMark } from "@/lib/draft/exercise-desk/ask";
import { type MarkPlace, type MarkPlane, markPlaceAt, markPlaces } from "@/lib/draft/exercise-desk/mark-places";
import { putPlace, USE_AFTER } from "@/lib/draft/exercise-desk/press-place";
import { capital } from "@/lib/plan/first-letter";
import { namePoints } from "@/lib/plan/name-points";
import { sayPoint } from "@/lib/plan/say-point";
import type { Desk } from "../desk/desk";
import { useDeskStore } from "../desk/draft-context";
import { sayNumbers } from "./mark-numbers";

/** How far an arrow goes through the places. */
const ARROWS: Readonly<Record<string, 1 | -1>> = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 };

/** Whether points are chosen on the drawings: while the exercise is made, and the pencil is not in hand. */
export function isMarking({ drawer, hand }: Pick<Desk, "drawer" | "hand">): boolean {
  return drawer === "exercise" && hand.kind === "choose";
}

/** Choosing and ordering the marks on one drawing, by pointer, touch or keys. */
export function useMarkPointing(plane: MarkPlane) {
  const store = useDeskStore();
  const placesNow = () => markPlaces(store.getState().history.draft.exercise, plane);

  const tell = (names: readonly string[]) => {
    const place = placesNow().find((each) => each.names[0] === names[0]);
    if (!place) return;
    const desk = store.getState();
    desk.setSpot({ plane, name: names[0] as string });
    const said = sayPlaceUse(desk, place);
    desk.say(said);
    desk.note(said);
  };
  const put = (place: MarkPlace, use: MarkPlace["use"]) => {
    const desk = store.getState();
    if (desk.apply(putPlace(desk.history.draft.exercise.task, place, use)).ok) tell(place.names);
  };
  const order = (place: MarkPlace, by: 1 | -1) => {
    const names = by < 0 ? place.names : place.names.toReversed();
    let joins = false;
    for (const name of names) {
      const desk = store.getState();
      const change = moveMark(desk.history.draft.exercise.task, name, by);
      if (change && desk.apply(change, { joins }).ok) joins = true;
    }
    tell(place.names);
  };

  return {
    /** A press on the drawing: the point there is asked next, then given, then neither. False where there is none. */
    press: (at: readonly [number, number], reach: number): boolean => {
      const place = markPlaceAt(placesNow(), at, reach);
      if (place) put(place, USE_AFTER[place.use]);
      return place !== null;
    },
    /** Keys on the drawing; whether the key meant something. */
    key: (event: KeyboardEvent): boolean => {
      const places = placesNow();
      const { spot } = store.getState();
      const here = spot?.plane === plane ? places.findIndex(({ names }) => names.includes(spot.name)) : -1;
      const place = places[here];
      const by = ARROWS[event.key];
      if (by !== undefined) {
        event.preventDefault();
        if (event.ctrlKey || event.altKey) place && order(place, by);
        else {
          const next =
            places[here < 0 ? (by > 0 ? 0 : places.length - 1) : (here + by + places.length) % places.length];
          if (next) tell(next.names);
        }
        return true;
      }
      if (event.key === "Enter" || event.key === " ") {
        event.preventDefault();
        if (place && !event.repeat) put(place, USE_AFTER[place.use]);
        return true;
      }
      if (event.key === "Backspace" || event.key === "Delete") {
        event.preventDefault();
        if (place) put(place, "free");
        return true;
      }
      return false;
    },
  };
}

/** What is asked of a place: "The foot and the top of B: asked as 3, 4." */
function sayPlaceUse({ history }: Desk, { names, numbers, use }: MarkPlace): string {
  const { plan, stage } = history.draft.exercise;
  const points = namePoints(plan, stage);
  const said = names.flatMap((name) => {
    const point = points.get(name);
    return point ? [sayPoint(point)] : [];
  });
  const uses = { asked: `asked as ${sayNumbers(numbers)}`, given: "given", free: "neither asked nor given" } as const;
  return `${capital(said.join(", "))}: ${uses[use]}.`;
}
