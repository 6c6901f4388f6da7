"use client";

import { useCallback, useEffect, useRef, useState } from "react";
import { pagesOfDemonstration, talkName } from "./addresses";
import { useRoom } from "./demonstration-context";
import type { Demonstration } from "./demonstration-store";
import { type Message, openTalk, type Showing, type Talk } from "./talk";

/** The notes window asks this often whether the demonstration is there; after three times without a word it is taken to be closed. */
export const ASK_EVERY_MS = 1500;
export const GONE_AFTER_MS = 3 * ASK_EVERY_MS;

/** Talks with the notes window: tells it what is shown, does what it presses, and knows whether it is open. */
export function useNotesWindow() {
  const { exercise, store, own } = useRoom();
  const talk = useRef<Talk | null>(null);
  const heard = useRef(0);
  const [open, setOpen] = useState(false);

  const name = talkName({ id: exercise.id, own });
  useEffect(() => {
    const startedAt = beganAt(name);
    const tell = () => talk.current?.send({ kind: "showing", showing: showingOf(store.getState(), startedAt) });
    const hear = (message: Message) => {
      const { on, back, blank, setBlank, show, letTry, go } = store.getState();
      if (message.kind === "ask") {
        heard.current = Date.now();
        setOpen(true);
        tell();
      } else if (message.kind === "bye" && message.role === "notes") setOpen(false);
      else if (message.kind === "go") go(message.at);
      else if (message.kind === "press")
        ({ on, back, blank: () => setBlank(!blank), show, try: letTry })[message.press]();
    };
    talk.current = openTalk(name, hear, window);
    tell();
    const stop = store.subscribe((now, before) => {
      if (isNews(now, before)) tell();
    });
    const bye = () => talk.current?.send({ kind: "bye", role: "demonstration" });
    window.addEventListener("pagehide", bye);
    const clock = window.setInterval(() => {
      if (Date.now() - heard.current > GONE_AFTER_MS) setOpen(false);
    }, ASK_EVERY_MS);
    return () => {
      bye();
      stop();
      window.removeEventListener("pagehide", bye);
      window.clearInterval(clock);
      talk.current?.close();
      talk.current = null;
    };
  }, [name, store]);

  const openNotes = useCallback(() => {
    const { notes } = pagesOfDemonstration({ id: exercise.id, own });
    if (notes !== null) window.open(notes, `plasterline-notes-${name}`, "popup,width=900,height=760");
  }, [exercise, own, name]);
  return { open, openNotes };
}

function showingOf({ at, blank, trying, guesses }: Demonstration, startedAt: number): Showing {
  return { at, blank, trying, guesses: guesses.length, startedAt };
}

function isNews(now: Demonstration, before: Demonstration): boolean {
  return (
    now.at !== before.at || now.blank !== before.blank || now.trying !== before.trying || now.guesses !== before.guesses
  );
}

/** When this window's demonstration began: kept with the window, so that a reload does not start the clock anew. */
function beganAt(name: string): number {
  const key = `plasterline.demonstrate.began.${name}`;
  try {
    const kept = Number(window.sessionStorage.getItem(key));
    if (kept > 0) return kept;
    const now = Date.now();
    window.sessionStorage.setItem(key, String(now));
    return now;
  } catch {
    return Date.now();
  }
}
