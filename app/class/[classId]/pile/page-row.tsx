"use client";

import { useStore } from "zustand";
import { Press } from "@/app/_parts/press";
import { When } from "@/app/_parts/when";
import type { Doubt } from "@/lib/classroom/pile/doubts-of";
import { type PageRead, pageDoubts, workOf } from "./page-state";
import type { PileStore } from "./pile-store";
import { Readings } from "./readings";
import { sendPage } from "./send-page";
import { NameLines, Whose } from "./whose";

type Props = { readonly store: PileStore; readonly page: PageRead };

/** One page of the pile: its name lines, exercise, student, readings, and what is doubtful about it. */
export function PageRow({ store, page }: Props) {
  const pages = useStore(store, (pile) => pile.pages);
  const numbered = useStore(store, (pile) => pile.numbered);
  const { id, from, state } = page;
  const { taken, sending, complaint, copy } = state;
  const doubts = taken ? [] : pageDoubts(page, pages, numbered);
  const work = workOf(state);
  const sure = doubts.length === 0;
  return (
    <li className="pile-row" data-state={taken ? "taken" : sure ? "sure" : "doubtful"} data-page={from}>
      <button
        type="button"
        className="pile-drawing"
        aria-label={`Look at ${from}`}
        disabled={taken !== null}
        onClick={() => store.getState().look(id)}
      >
        <Readings drawing={state.drawing} />
      </button>
      <div className="pile-what">
        <NameLines page={page} />
        <p className="pile-exercise">{state.exercise.title}</p>
        <p className="class-quiet">
          {work ? `${work.homework}; ` : ""}
          {copy === null ? "" : `sheet ${copy}; `}
          {from}
        </p>
      </div>
      <div className="pile-settle">
        <Whose store={store} page={page} />
        {taken ? (
          <p role="status" className="pile-taken">
            In the gradebook since <When at={taken.receivedAt} />
            {taken.score !== null && `, ${Math.round(taken.score)} of 100`}
            {taken.late && ", late"}.
          </p>
        ) : (
          <Doubts doubts={doubts} />
        )}
        {complaint && (
          <p role="alert" className="complaint">
            {complaint}
          </p>
        )}
        {!taken && (
          <div className="pile-presses">
            {sure ? (
              <Press
                weight="small"
                disabled={sending}
                aria-label={`Confirm ${from}`}
                onClick={() => sendPage(store, page)}
              >
                {sending ? "Handing it in…" : "Confirm"}
              </Press>
            ) : null}
            <Press weight="small" onClick={() => store.getState().look(id)} aria-label={`Look at ${from} closely`}>
              Look at it
            </Press>
            <Press weight="small" onClick={() => store.getState().takeOut(id)} aria-label={`Take ${from} out`}>
              Take it out
            </Press>
          </div>
        )}
      </div>
    </li>
  );
}

/** What has to be looked at, in sentences. */
export function Doubts({ doubts }: { readonly doubts: readonly Doubt[] }) {
  if (doubts.length === 0) return <p className="pile-sure">Sure.</p>;
  return (
    <ul className="pile-doubts">
      {doubts.map(({ kind, say }) => (
        <li key={`${kind} ${say}`}>{say}</li>
      ))}
    </ul>
  );
}
