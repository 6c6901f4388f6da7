"use client";

import { useEffect, useState } from "react";
import { Press } from "@/app/_parts/press";
import type { Draft, Thing } from "@/lib/draft/draft";
import type { Edit } from "@/lib/draft/edit";
import { draftNotes } from "@/lib/draft/sense/draft-notes";
import type { Note } from "@/lib/draft/sense/note";

type Props = {
  readonly draft: Draft;
  readonly apply: (change: Edit) => string | null;
  /** Shows things in the drawing. */
  readonly show: (things: readonly Thing[]) => void;
};

/** The notes are made once the pencil has rested so long, milliseconds. */
const REST_MS = 300;

/** Quiet notes on the plan: nothing here stops anyone. */
export function NotesSection({ draft, apply, show }: Props) {
  const [notes, setNotes] = useState<readonly Note[] | null>(null);
  useEffect(() => {
    const later = setTimeout(() => setNotes(draftNotes(draft)), REST_MS);
    return () => clearTimeout(later);
  }, [draft]);
  return (
    <section aria-labelledby="draft-notes">
      <h2 id="draft-notes" className="notes-title">
        Notes
      </h2>
      {notes === null && <p>Looking it over...</p>}
      {notes?.length === 0 && <p>Nothing to note.</p>}
      <ul className="draft-note-list">
        {notes?.map((note, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: notes have no name, and are made anew together
          <li key={i}>
            <p>
              {note.weight === "fault" && <strong>To be mended: </strong>}
              {note.say}
            </p>
            <p className="draft-note">{note.remedy}</p>
            <div className="draft-presses">
              {note.things.length > 0 && (
                <Press weight="small" onClick={() => show(note.things)}>
                  Show it
                </Press>
              )}
              {note.edit && (
                <Press weight="small" onClick={() => note.edit && apply(note.edit)}>
                  Mend it so
                </Press>
              )}
            </div>
          </li>
        ))}
      </ul>
    </section>
  );
}
