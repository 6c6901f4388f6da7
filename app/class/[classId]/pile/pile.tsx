"use client";

import { useEffect, useState } from "react";
import { useStore } from "zustand";
import { Press } from "@/app/_parts/press";
import { openWorkerDesk, startCheckWorker } from "@/app/_photo/worker-desk";
import type { PileStudent } from "@/lib/classroom/pile/match-page";
import { Part } from "../../part";
import { Look } from "./look";
import { PageRow } from "./page-row";
import { inOrder, isRead, type PilePage } from "./page-state";
import { PileDrop } from "./pile-drop";
import { createPileReader, type PileReader } from "./pile-reader";
import { createPile, type PileStore, surePages } from "./pile-store";
import { createFinder } from "./read-pages";
import { sendPage } from "./send-page";
import { UnreadRow } from "./unread-row";
import "./pile.css";

type Props = { readonly classId: string; readonly students: readonly PileStudent[] };

/** From a pile of photographs to the gradebook: what was read of each page, for the teacher to confirm. */
export function Pile({ classId, students }: Props) {
  const [store] = useState(() => createPile(students));
  const [reader, setReader] = useState<PileReader | null>(null);
  useEffect(() => {
    const made = createPileReader(store, openWorkerDesk(startCheckWorker), createFinder(classId));
    setReader(made);
    return made.close;
  }, [store, classId]);
  const pages = useStore(store, (state) => state.pages);
  const looking = useStore(store, (state) => state.looking);
  useKeepFromLeaving(pages.some(({ state }) => state.at !== "unread" && !(state.at === "read" && state.taken)));
  const page = pages.filter(isRead).find(({ id }) => id === looking);
  return (
    <>
      <PileDrop onFiles={(files) => reader?.add(files)} />
      {pages.length > 0 && <Reading pages={pages} />}
      <ReadPages store={store} />
      <Unread store={store} reader={reader} />
      {page && <Look key={page.id} store={store} page={page} />}
    </>
  );
}

function Reading({ pages }: { readonly pages: readonly PilePage[] }) {
  const done = pages.filter(({ state }) => state.at === "read" || state.at === "unread").length;
  const now = pages.find(({ state }) => state.at === "reading");
  const words = now?.state.at === "reading" ? `${now.from}: ${now.state.words}…` : "";
  return (
    <Part id="reading" title="Reading" note="One page after another, in this browser.">
      <progress className="pile-progress" value={done} max={pages.length} aria-labelledby="reading" />
      <p role="status" data-read={done}>
        {done === pages.length ? `${sayPages(done)} looked at.` : `${done} of ${sayPages(pages.length)} looked at.`}
      </p>
      <p className="class-quiet pile-now">{words}</p>
    </Part>
  );
}

function ReadPages({ store }: { readonly store: PileStore }) {
  const state = useStore(store);
  const pages = inOrder(state.pages);
  if (pages.length === 0) return null;
  const sure = surePages(state);
  const taken = pages.filter((page) => page.state.taken !== null).length;
  const isNumbered =
    state.students.some(({ number }) => number !== null) && pages.some((page) => page.state.copy !== null);
  const confirmAll = async () => {
    for (const page of sure) await sendPage(store, page);
  };
  return (
    <section className="pile-pages" aria-labelledby="pages">
      <div className="pile-head">
        <div>
          <h2 id="pages" className="lettering">
            What was read
          </h2>
          <p className="class-quiet">
            Doubtful pages come first. Nothing is handed in before you confirm it.
            {taken > 0 && ` ${taken} of ${sayPages(pages.length)} in the gradebook.`}
          </p>
        </div>
        <Press weight="main" disabled={sure.length === 0} onClick={confirmAll}>
          Confirm all that are sure: {sure.length}
        </Press>
      </div>
      {isNumbered && (
        <label className="pile-tick">
          <input type="checkbox" checked={state.numbered} onChange={(event) => state.byNumber(event.target.checked)} />
          The sheets were given out by the class list’s numbers
        </label>
      )}
      <ol className="pile-list">
        {pages.map((page) => (
          <PageRow key={page.id} store={store} page={page} />
        ))}
      </ol>
    </section>
  );
}

function Unread({ store, reader }: { readonly store: PileStore; readonly reader: PileReader | null }) {
  const pages = useStore(store, (state) => state.pages).filter(({ state }) => state.at === "unread");
  if (pages.length === 0) return null;
  return (
    <Part id="unread" title="Not read" note="Each with the reason, and what helps.">
      <ul className="pile-unread">
        {pages.map((page) => (
          <UnreadRow
            key={page.id}
            page={page}
            again={reader?.mayRead(page.id) ? () => reader.again(page.id) : null}
            takeOut={() => store.getState().takeOut(page.id)}
          />
        ))}
      </ul>
    </Part>
  );
}

/** Has the browser ask before a pile that is not handed in is lost. */
function useKeepFromLeaving(unsaved: boolean) {
  useEffect(() => {
    if (!unsaved) return;
    const ask = (event: BeforeUnloadEvent) => event.preventDefault();
    window.addEventListener("beforeunload", ask);
    return () => window.removeEventListener("beforeunload", ask);
  }, [unsaved]);
}

function sayPages(count: number): string {
  return count === 1 ? "1 page" : `${count} pages`;
}
