"use client";

import { useState } from "react";
import { useStore } from "zustand";
import { type PageRead, workOf } from "./page-state";
import type { PileStore } from "./pile-store";

type Props = { readonly store: PileStore; readonly page: PageRead };

/** The lines for the name, as they are on the paper. */
export function NameLines({ page }: Pick<Props, "page">) {
  return (
    // biome-ignore lint/performance/noImgElement: a picture that is nowhere but in this browser
    <img src={page.state.name} alt={`The lines for the name on ${page.from}`} className="pile-name photo-image" />
  );
}

/** Whose a page is, for which homework, and whether it came in late. */
export function Whose({ store, page }: Props) {
  const students = useStore(store, (pile) => pile.students);
  const { id, from, state } = page;
  const { works, memberId, itemId, late, taken, sending } = state;
  const work = workOf(state);
  const [now] = useState(() => new Date().toISOString());
  const set = students.filter((student) => work?.memberIds.includes(student.memberId));
  const { chooseStudent, chooseItem, callLate } = store.getState();
  const fixed = taken !== null || sending;
  return (
    <div className="pile-whose">
      <select
        className="look-list"
        aria-label={`Student of ${from}`}
        value={memberId ?? ""}
        disabled={fixed}
        onChange={(event) => chooseStudent(id, event.target.value || null)}
      >
        <option value="">Whose is it?</option>
        {set.map((student) => (
          <option key={student.memberId} value={student.memberId}>
            {student.number === null ? student.name : `${student.name}, ${student.number}`}
          </option>
        ))}
      </select>
      {works.length > 1 && (
        <select
          className="look-list"
          aria-label={`Homework of ${from}`}
          value={itemId ?? ""}
          disabled={fixed}
          onChange={(event) => chooseItem(id, event.target.value)}
        >
          {works.map((each) => (
            <option key={each.itemId} value={each.itemId}>
              {each.archived ? `${each.homework}, put away` : each.homework}
            </option>
          ))}
        </select>
      )}
      {work?.dueAt != null && work.dueAt < now && (
        <label className="pile-tick">
          <input
            type="checkbox"
            checked={late}
            disabled={fixed}
            aria-label={`${from} came in late`}
            onChange={(event) => callLate(id, event.target.checked)}
          />
          It came in late
        </label>
      )}
    </div>
  );
}
