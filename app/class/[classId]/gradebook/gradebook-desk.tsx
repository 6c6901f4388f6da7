"use client";

import { useState } from "react";
import type { Cell, Gradebook } from "@/lib/classroom/gradebook/gradebook";
import { GradebookTable } from "../../gradebook-table";
import { Part } from "../../part";
import { CellDesk } from "../cell-desk";
import { InTime } from "../in-time";

type Props = { readonly classId: string; readonly gradebook: Gradebook };

/** The table, and below it whatever cell was chosen, with all that can be done to it. */
export function GradebookDesk({ classId, gradebook }: Props) {
  const [chosen, setChosen] = useState<string | null>(null);
  const keyOf = ({ itemId, memberId }: Cell) => `${itemId} ${memberId}`;
  const row = gradebook.rows.find(({ cells }) => cells.some((cell) => keyOf(cell) === chosen));
  const cell = row?.cells.find((each) => keyOf(each) === chosen);
  const work = gradebook.work.find(({ columns }) => columns.some(({ itemId }) => itemId === cell?.itemId));
  const column = work?.columns.find(({ itemId }) => itemId === cell?.itemId);
  return (
    <>
      <GradebookTable
        gradebook={gradebook}
        showCell={(each, words, name) => (
          <button
            type="button"
            className="cell"
            aria-label={`${name}: ${words}`}
            aria-expanded={keyOf(each) === chosen}
            onClick={() => setChosen(keyOf(each) === chosen ? null : keyOf(each))}
          >
            {words}
          </button>
        )}
      />
      {row && cell && work && column ? (
        <Part
          id="cell"
          title={`${row.student.name}: ${column.title}`}
          note={cell.receivedAt === null ? "Nothing has been handed in." : `Of ${work.title}.`}
        >
          {cell.handInId !== null && (
            <div className="class-presses">
              <a className="press ruled" data-weight="main" href={`/class/${classId}/drawing/${cell.handInId}`}>
                Open the drawing
              </a>
            </div>
          )}
          {cell.handInId !== null && cell.receivedAt !== null && (cell.late || cell.inTimeReason !== null) && (
            <InTime
              key={cell.handInId}
              handInId={cell.handInId}
              name={`${row.student.name}, ${column.title}`}
              madeAt={cell.madeAt}
              receivedAt={cell.receivedAt}
              dueAt={cell.dueAt}
              reason={cell.inTimeReason}
            />
          )}
          <CellDesk key={`${keyOf(cell)} ${cell.override?.at ?? ""}`} cell={cell} work={work} />
        </Part>
      ) : (
        <p className="class-quiet">Choose a score to open the drawing, to change it, or to excuse the student.</p>
      )}
    </>
  );
}
