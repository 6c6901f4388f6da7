"use client";

import { useCallback, useEffect, useRef, useState } from "react";
import { type Message, openTalk, type Showing, type Talk } from "../talk";
import { ASK_EVERY_MS, GONE_AFTER_MS } from "../use-notes-window";

/** Whether the projected window is there. */
export type Other = "looking" | "open" | "closed";

/** Talks with the projected window: what it shows, and whether it is open at all. What it showed last stays when it closes. */
export function useDemonstrationWindow(id: string) {
  const talk = useRef<Talk | null>(null);
  const heard = useRef(0);
  const [showing, setShowing] = useState<Showing | null>(null);
  const [other, setOther] = useState<Other>("looking");

  useEffect(() => {
    const began = Date.now();
    const hear = (message: Message) => {
      if (message.kind === "showing") {
        heard.current = Date.now();
        setShowing(message.showing);
        setOther("open");
      } else if (message.kind === "bye" && message.role === "demonstration") setOther("closed");
    };
    const ask = () => {
      if (Date.now() - Math.max(heard.current, began) > GONE_AFTER_MS) setOther("closed");
      talk.current?.send({ kind: "ask" });
    };
    talk.current = openTalk(id, hear, window);
    ask();
    const clock = window.setInterval(ask, ASK_EVERY_MS);
    const bye = () => talk.current?.send({ kind: "bye", role: "notes" });
    window.addEventListener("pagehide", bye);
    return () => {
      bye();
      window.clearInterval(clock);
      window.removeEventListener("pagehide", bye);
      talk.current?.close();
      talk.current = null;
    };
  }, [id]);
  const send = useCallback((message: Message) => talk.current?.send(message), []);
  return { showing, other, send };
}
