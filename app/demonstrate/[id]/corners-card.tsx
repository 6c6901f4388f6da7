"use client";

import { useMemo } from "react";
import { Card } from "./card";
import { cornerEntries } from "./corner-entries";
import { useRoom, useStep } from "./demonstration-context";

/** The list of corners: each leads to the step that begins it. */
export function CornersCard() {
  const { store, steps } = useRoom();
  const { number } = useStep();
  const entries = useMemo(() => cornerEntries(steps), [steps]);
  const current = entries.findLast((entry) => entry.number <= number);
  return (
    <Card title="Corners" onAway={() => store.getState().setCard(null)}>
      <ol className="corner-list">
        {entries.map((entry) => (
          <li key={entry.number}>
            <button
              type="button"
              aria-current={entry === current ? "step" : undefined}
              onClick={() => {
                store.getState().setCard(null);
                store.getState().go(entry.number - 1);
              }}
            >
              <span className="corner-number">{entry.number}</span> {entry.title}
            </button>
          </li>
        ))}
      </ol>
    </Card>
  );
}
