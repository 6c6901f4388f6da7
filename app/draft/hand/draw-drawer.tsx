"use client";

import { Press } from "@/app/_parts/press";
import { useDesk, useDeskStore } from "../desk/draft-context";
import { BringHere } from "../kept/bring-here";
import { TraceSection } from "../trace/trace-section";
import type { Hand } from "./hand";
import { HandNotes } from "./hand-notes";

const STARTS: readonly { readonly words: string; readonly hand: Hand }[] = [
  { words: "Draw walls", hand: { kind: "walls", corners: [] } },
  { words: "Put in an opening", hand: { kind: "opening" } },
  { words: "Build a platform", hand: { kind: "platform", corners: [] } },
  { words: "Build a stair", hand: { kind: "line", draws: "stair", from: null } },
  { words: "Set furniture", hand: { kind: "put", puts: "furniture" } },
  { words: "Stand a column", hand: { kind: "put", puts: "column" } },
  { words: "Hang a leg", hand: { kind: "line", draws: "leg", from: null } },
  { words: "Hang a border", hand: { kind: "line", draws: "border", from: null } },
  { words: "Set a backing", hand: { kind: "line", draws: "backing", from: null } },
  { words: "Mark a point", hand: { kind: "put", puts: "point" } },
];

/** What to draw next, or, with the pencil in hand, how it goes on. */
export function DrawDrawer() {
  const hand = useDesk((desk) => desk.hand);
  const walls = useDesk((desk) => desk.history.draft.exercise.plan.walls.length);
  const store = useDeskStore();
  if (hand.kind !== "choose") return <HandNotes hand={hand} />;
  return (
    <>
      <h2 className="notes-title">What comes on to the plan?</h2>
      <p>
        Everything is set down on the plan with a press, or typed. Press a thing that is there to take hold of it.
        {walls === 0 && " An opening needs a wall first."}
      </p>
      <div className="draft-starts">
        {STARTS.map(({ words, hand: start }) => (
          <Press
            key={words}
            weight="small"
            disabled={start.kind === "opening" && walls === 0}
            onClick={() => {
              store.getState().take(start);
              document.querySelector<HTMLElement>(".draft-plan .draft-keys")?.focus({ preventScroll: true });
            }}
          >
            {words}
          </Press>
        ))}
      </div>
      {walls === 0 && <BringHere />}
      <TraceSection />
    </>
  );
}
