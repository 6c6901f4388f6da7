"use client";

import { useEffect, useState } from "react";
import type { LiveState } from "@/lib/classroom/live/live-state";

/** A server that hears nobody still beats every fifteen seconds; after this long without, the stream is taken for dead. */
const SILENCE_MS = 40_000;
/** How long to wait before coming in anew where the server refused, in milliseconds. */
const AGAIN_MS = 2500;

/**
 * A vote as it happens. The stream brings the whole state whenever it begins, so that nothing is lost while it was down.
 *
 * @param open false while this page has not come in yet
 */
export function useLive(voteId: string, first: LiveState, open = true) {
  const [state, setState] = useState(first);
  const [lost, setLost] = useState(false);

  useEffect(() => {
    if (!open) return;
    let source: EventSource | null = null;
    let again: ReturnType<typeof setTimeout> | undefined;
    let silence: ReturnType<typeof setTimeout> | undefined;
    const heard = () => {
      setLost(false);
      clearTimeout(silence);
      silence = setTimeout(begin, SILENCE_MS);
    };
    const begin = () => {
      clearTimeout(again);
      source?.close();
      const fresh = new EventSource(`/api/live/events?vote=${encodeURIComponent(voteId)}`);
      source = fresh;
      fresh.onopen = heard;
      fresh.addEventListener("beat", heard);
      fresh.onmessage = ({ data }) => {
        heard();
        setState(JSON.parse(data) as LiveState);
      };
      fresh.onerror = () => {
        setLost(true);
        // The browser comes back by itself from a broken line, but not from a refusal.
        if (fresh.readyState === EventSource.CLOSED) again = setTimeout(begin, AGAIN_MS);
      };
    };
    begin();
    // A phone that was asleep may hold a stream that died meanwhile.
    const woken = () => {
      if (document.visibilityState === "visible" && source?.readyState !== EventSource.OPEN) begin();
    };
    document.addEventListener("visibilitychange", woken);
    window.addEventListener("online", begin);
    return () => {
      document.removeEventListener("visibilitychange", woken);
      window.removeEventListener("online", begin);
      clearTimeout(again);
      clearTimeout(silence);
      source?.close();
    };
  }, [voteId, open]);

  return { state, lost };
}
