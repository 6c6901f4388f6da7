"use client";

import { useEffect } from "react";
import { type Compass, NUDGE_STEPS_MM, type NudgeStep, nudge } from "@/app/_sheet/constrain";
import { ZOOM_STEP } from "@/app/_sheet/pane-state";
import { useSheet } from "@/app/_sheet/sheet-context";
import { type DemonstrationRoom, useRoom } from "./demonstration-context";
import type { Demonstration, PencilColour, Place } from "./demonstration-store";
import { guessLabel, LABEL_ID } from "./guess-label";

/** What the page does that the store does not know of. */
export type PageMoves = {
  readonly fullScreen: () => void;
  readonly layout: () => void;
  readonly light: () => void;
  readonly notes: () => void;
  readonly controls: () => void;
};

const ARROWS: Readonly<Record<string, Compass>> = {
  ArrowLeft: "left",
  ArrowRight: "right",
  ArrowUp: "up",
  ArrowDown: "down",
};

/** Page keys are what a presenter's remote sends; some send F5 as well (common practice, no source). */
const STEP_KEYS: Readonly<Record<string, "on" | "back" | "first" | "last">> = {
  " ": "on",
  PageDown: "on",
  ArrowRight: "on",
  ArrowDown: "on",
  PageUp: "back",
  ArrowLeft: "back",
  ArrowUp: "back",
  Home: "first",
  End: "last",
};

const PAGE_KEYS: Readonly<Record<string, keyof PageMoves>> = {
  f: "fullScreen",
  l: "layout",
  d: "light",
  n: "notes",
  m: "controls",
};

const ZOOM_KEYS: Readonly<Record<string, number>> = { "+": ZOOM_STEP, "=": ZOOM_STEP, "-": 1 / ZOOM_STEP };

const LETTER_KEYS: Readonly<Record<string, (demonstration: Demonstration) => void>> = {
  b: ({ blank, setBlank }) => setBlank(!blank),
  ".": ({ blank, setBlank }) => setBlank(!blank),
  r: ({ ring, setRing }) => setRing(!ring),
  p: ({ pencil, setPencil }) => setPencil(nextPencil(pencil)),
  u: ({ rubOut }) => rubOut("last"),
  x: ({ rubOut }) => rubOut("all"),
  t: ({ trying, letTry, show }) => (trying === "waiting" ? show() : letTry()),
  i: () => document.getElementById(LABEL_ID)?.focus(),
  c: ({ setCard }) => setCard("corners"),
  "?": ({ setCard }) => setCard("keys"),
};

/** Keys of the window: a presenter's remote, the arrows, and letters of our own (see the card of keys), unless these are off. */
export function useKeys(page: PageMoves, letters: boolean) {
  const room = useRoom();
  const { views } = useSheet();

  useEffect(() => {
    const { store, plane } = room;
    const moveFor = (event: KeyboardEvent): (() => void) | null => {
      const waiting = guessMove(room, event, () => views.getState()[plane].bounds);
      if (waiting) return waiting;
      const step = STEP_KEYS[event.key];
      if (step) return () => takeStep(store.getState(), step);
      if (event.key === "F5") return page.fullScreen;
      if (!letters || event.altKey) return null;
      const key = event.key.toLowerCase();
      const zoom = ZOOM_KEYS[key];
      if (zoom) return () => views.getState().zoom(plane, zoom);
      if (key === "0") return () => views.getState().whole(plane);
      const pageKey = PAGE_KEYS[key];
      if (pageKey) return page[pageKey];
      const command = LETTER_KEYS[key];
      return command ? () => command(store.getState()) : null;
    };
    const press = (event: KeyboardEvent) => {
      if (event.ctrlKey || event.metaKey || belongsElsewhere(event)) return;
      const { card, putAway } = store.getState();
      if (event.key === "Escape") putAway();
      if (event.key === "Escape" || card) return;
      const move = moveFor(event);
      if (!move) return;
      event.preventDefault();
      move();
    };
    window.addEventListener("keydown", press);
    window.addEventListener("click", freeTheKeys);
    return () => {
      window.removeEventListener("keydown", press);
      window.removeEventListener("click", freeTheKeys);
    };
  }, [room, views, page, letters]);
}

function takeStep({ on, back, go, steps }: Demonstration, step: "on" | "back" | "first" | "last") {
  if (step === "on") on();
  else if (step === "back") back();
  else go(step === "first" ? 0 : steps.length - 1);
}

type BoundsOf = () => { readonly left: number; readonly right: number; readonly bottom: number; readonly top: number };

/** While guesses are taken the arrows aim, Enter sets down and Backspace takes back. */
function guessMove({ store, exercise }: DemonstrationRoom, event: KeyboardEvent, boundsOf: BoundsOf) {
  const { trying, aim, guess, setAim, takeBack } = store.getState();
  if (trying !== "waiting") return null;
  const toward = ARROWS[event.key];
  if (toward) {
    const size: NudgeStep = event.altKey ? "fine" : event.shiftKey ? "coarse" : "plain";
    return () => {
      const bounds = boundsOf();
      const start: Place = [0, Math.max(0, bounds.bottom + (bounds.top - bounds.bottom) / 4)];
      const at = aim ? nudge(aim, toward, NUDGE_STEPS_MM[size], exercise.scaleRatio, bounds) : start;
      setAim([at[0], at[1]]);
    };
  }
  if (event.key === "Enter" && aim) return () => guess(aim, guessLabel());
  return event.key === "Backspace" ? takeBack : null;
}

function nextPencil(pencil: PencilColour | null): PencilColour | null {
  if (pencil === null) return "red";
  return pencil === "red" ? "blue" : null;
}

/** A field takes its own keys, and a press in focus its Space and Enter. */
function belongsElsewhere({ target, key }: KeyboardEvent): boolean {
  if (!(target instanceof HTMLElement)) return false;
  if (target.matches("input, select, textarea")) return key !== "Escape" && key !== "PageDown" && key !== "PageUp";
  return (key === " " || key === "Enter") && target.closest("button, a, summary") !== null;
}

/** A press made with the pointer gives the keys back to the steps, so that Space goes on and does not press it again. */
function freeTheKeys({ detail, target }: MouseEvent) {
  if (detail > 0 && target instanceof Element) target.closest<HTMLElement>("button, a")?.blur();
}
