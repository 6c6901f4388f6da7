"use client";

import { useEffect, useMemo, useRef } from "react";
import { useStore } from "zustand";
import { createStore } from "zustand/vanilla";
import { Press } from "@/app/_parts/press";
import { isOpen, nextOpen } from "@/app/_photo/checked-drawing";
import { type PointDesk, pointSteps } from "@/app/_photo/point-desk";
import { PointsBoard } from "@/app/_photo/points-board";
import { sayReadings } from "@/app/_photo/say-readings";
import { Doubts } from "./page-row";
import { inOrder, type PageRead, pageDoubts } from "./page-state";
import type { PileStore } from "./pile-store";
import { sendPage } from "./send-page";
import { NameLines, Whose } from "./whose";

type Props = { readonly store: PileStore; readonly page: PageRead };

/** One page closely: every reading on the straightened photograph, to be dragged, dropped or said to be right. */
export function Look({ store, page }: Props) {
  const { id, from, state } = page;
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    dialog.current?.showModal();
  }, []);
  const desk = useDesk(store, page);
  const drawing = useStore(desk, (points) => points.drawing) ?? state.drawing;
  const pages = useStore(store, (pile) => pile.pages);
  const numbered = useStore(store, (pile) => pile.numbered);
  const doubts = pageDoubts(page, pages, numbered);
  const open = drawing.points.filter(isOpen).length;
  const blocked = doubts.find(({ blocks }) => blocks);
  const leave = () => store.getState().look(null);

  const confirm = async () => {
    if (open > 0) return desk.getState().select(nextOpen(drawing));
    if (blocked) return dialog.current?.querySelector("select")?.focus();
    await sendPage(store, page);
    const after = store.getState();
    const sent = after.pages.find((each) => each.id === id);
    if (sent?.state.at !== "read" || sent.state.taken === null) return;
    const left = inOrder(after.pages).filter((each) => each.state.taken === null);
    // What is doubtful leads on to what is; the sure wait in the list.
    after.look(left.find((each) => pageDoubts(each, after.pages, after.numbered).length > 0)?.id ?? null);
  };
  return (
    <dialog ref={dialog} className="pile-look check check-board" aria-label={`Look at ${from}`} onClose={leave}>
      <header className="check-edge">
        <span className="check-title lettering">{state.exercise.title}</span>
        <span className="pile-from">{from}</span>
        <Press weight="small" onClick={leave}>
          Back to the pile
        </Press>
      </header>
      <PointsBoard
        exercise={state.exercise}
        drawing={drawing}
        desk={desk}
        caption="The drawing"
        head={
          <>
            <NameLines page={page} />
            <Whose store={store} page={page} />
            <Doubts doubts={doubts} />
            <p className="check-quiet">{sayReadings(drawing)}</p>
            {state.complaint && (
              <p role="alert" className="complaint">
                {state.complaint}
              </p>
            )}
          </>
        }
        foot={
          <>
            <Press weight="main" onClick={confirm} disabled={state.sending}>
              {open > 0
                ? `Next to look at: ${open} left`
                : state.memberId === null
                  ? "Whose is it?"
                  : "Confirm this page"}
            </Press>
            <Press onClick={() => store.getState().takeOut(id)}>Take it out</Press>
          </>
        }
      />
    </dialog>
  );
}

/** The page's readings under the hand; each step is the pile's as well, a drag once it rests. */
function useDesk(store: PileStore, { id, state }: PageRead) {
  // biome-ignore lint/correctness/useExhaustiveDependencies: a page's readings are taken up once, as they are when it is opened
  return useMemo(
    () =>
      createStore<PointDesk>((set, get) => ({
        drawing: state.drawing,
        selected: nextOpen(state.drawing),
        earlier: [],
        ...pointSteps(get, set, (drawing) => {
          set({ drawing });
          store.getState().change(id, drawing);
        }),
      })),
    [store, id],
  );
}
