"use client";

import { Press } from "@/app/_parts/press";
import { useDesk, useDeskStore } from "../desk/draft-context";
import { type Hand, isUnderWay } from "./hand";
import { wordsOfHand } from "./hand-words";
import { MeasureFields } from "./measure-fields";
import { OpeningPlace } from "./opening-place";
import { TypedCorner } from "./typed-corner";

type Drawing = Exclude<Hand, { readonly kind: "choose" }>;

/** With the pencil in hand: what to do next, where it is held, what the thing is to be like, and how to end. */
export function HandNotes({ hand }: { readonly hand: Drawing }) {
  const store = useDeskStore();
  const trouble = useDesk((desk) => desk.trouble);
  const held = useDesk((desk) => desk.aim !== null);
  const { title, step } = wordsOfHand(hand);
  const corners = hand.kind === "walls" || hand.kind === "platform" ? hand.corners.length : 0;
  const enough = hand.kind === "walls" ? corners > 1 : corners > 2;
  const under = isUnderWay(hand);
  return (
    <>
      <h2 className="notes-title">{title}</h2>
      <p>{step}</p>
      {trouble && <p className="draft-wrong">{trouble}</p>}
      {hand.kind === "opening" ? <OpeningPlace /> : <TypedCorner hand={hand} />}
      <div className="notes-presses draft-presses">
        <Press weight="small" disabled={!held} onClick={() => store.getState().setDown()}>
          Set it down here
        </Press>
        {under && (
          <Press weight="small" onClick={() => store.getState().backOut()}>
            Take the last corner back
          </Press>
        )}
        {enough && (
          <Press weight="small" onClick={() => store.getState().end()}>
            {hand.kind === "walls" ? "End the run" : "Close the platform"}
          </Press>
        )}
        {hand.kind === "walls" && corners > 2 && <JoinUp hand={hand} />}
        {!under && (
          <Press weight="small" onClick={() => store.getState().end()}>
            Put the pencil down
          </Press>
        )}
      </div>
      <MeasureFields hand={hand} />
    </>
  );
}

/** Closes a run: a last wall back to its first corner. */
function JoinUp({ hand }: { readonly hand: Extract<Drawing, { readonly kind: "walls" }> }) {
  const store = useDeskStore();
  return (
    <Press
      weight="small"
      onClick={() => {
        const { history, setAim, setDown } = store.getState();
        const [first] = hand.corners;
        const at = typeof first === "string" ? history.draft.exercise.plan.corners.get(first) : first;
        if (!at) return;
        setAim({ kind: "place", at, to: [], guides: [] });
        setDown();
      }}
    >
      Join up with the first corner
    </Press>
  );
}
