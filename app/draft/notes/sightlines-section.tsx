"use client";

import { useEffect, useMemo, useState } from "react";
import { Press } from "@/app/_parts/press";
import type { Draft, Thing } from "@/lib/draft/draft";
import type { Edit } from "@/lib/draft/edit";
import { type Seat, usualSeats } from "@/lib/draft/sense/sightlines/seat";
import type { Sight } from "@/lib/draft/sense/sightlines/sight";
import { sightlines } from "@/lib/draft/sense/sightlines/sightlines";
import { ChoiceField } from "../fields/fields";
import { SeatFields } from "./seat-fields";
import { SightDrawing } from "./sight-drawing";
import "./notes.css";

type Props = {
  readonly draft: Draft;
  readonly apply: (change: Edit) => string | null;
  /** Shows things in the drawing. */
  readonly show: (things: readonly Thing[]) => void;
  /** Lays over the plan what the chosen seat sees; null takes it off. */
  readonly lay: (sight: Sight | null) => void;
};

/** Sight lines are worked out once the pencil has rested so long, milliseconds. */
const REST_MS = 300;

/** What an author may look from: no seat, or one of the house. */
const NO_SEAT = "none";

/** What a seat of the house sees of the set, and what it should not: a seat is chosen, and moved where the house has its own. */
export function SightlinesSection({ draft, apply, show, lay }: Props) {
  const { stage, viewer } = draft.exercise;
  const usual = useMemo(() => usualSeats(stage, viewer), [stage, viewer]);
  const [chosen, choose] = useState(NO_SEAT);
  const [moved, setMoved] = useState<Readonly<Record<string, Partial<Seat>>>>({});
  const seat = useMemo(() => {
    const one = usual.find(({ id }) => id === chosen);
    return one ? { ...one, ...moved[one.id] } : null;
  }, [usual, chosen, moved]);
  const sight = useSight(draft, seat);
  useEffect(() => {
    lay(sight);
    return () => lay(null);
  }, [sight, lay]);
  const move = (id: string, change: Partial<Seat>) => {
    setMoved({ ...moved, [id]: { ...moved[id], ...change } });
    return null;
  };
  const words = Object.fromEntries([
    [NO_SEAT, "no seat"],
    ...usual.map(({ id, name }) => [id, name.charAt(0).toLowerCase() + name.slice(1)] as const),
  ]);
  return (
    <section aria-labelledby="draft-sightlines">
      <h2 id="draft-sightlines" className="notes-title">
        Sight lines
      </h2>
      <ChoiceField
        label="Seen from"
        words={words}
        order={[NO_SEAT, ...usual.map(({ id }) => id)]}
        value={chosen}
        onChoice={choose}
        note="Left and right are the audience's. Doors stand open."
      />
      {seat && <SeatFields seat={seat} onSeat={(change) => move(seat.id, change)} />}
      {seat && !sight && <p>Looking from there...</p>}
      {sight && (
        <>
          <SightDrawing exercise={draft.exercise} sight={sight} />
          <ul className="draft-note-list">
            {sight.remarks.map(({ say, remedy, things, edit }) => (
              <li key={say}>
                <p>{say}</p>
                {remedy && <p className="draft-note">{remedy}</p>}
                <div className="draft-presses">
                  {things.length > 0 && (
                    <Press weight="small" onClick={() => show(things)}>
                      Show it
                    </Press>
                  )}
                  {edit && (
                    <Press weight="small" onClick={() => apply(edit)}>
                      Put it there
                    </Press>
                  )}
                </div>
              </li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
}

/** What a seat sees, worked out at rest; what was seen from another seat, or of another plan, is not shown meanwhile. */
function useSight(draft: Draft, seat: Seat | null): Sight | null {
  const [sight, setSight] = useState<Sight | null>(null);
  useEffect(() => {
    if (!seat) {
      setSight(null);
      return;
    }
    const later = setTimeout(() => setSight(sightlines(draft, [seat])[0] ?? null), REST_MS);
    return () => clearTimeout(later);
  }, [draft, seat]);
  return sight && seat && sight.seat === seat ? sight : null;
}
