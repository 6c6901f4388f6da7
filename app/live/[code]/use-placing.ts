"use client";

import { useCallback, useEffect, useState } from "react";
import { type Reply, sendJson } from "@/app/_live/send-json";
import type { Guess } from "@/lib/classroom/live/vote-result";
import type { VoteStage } from "@/lib/classroom/live/vote-stage";
import { createPlacing, type Place } from "./placing";

/** Where a mark that is not acknowledged yet waits beyond a reload of this tab. */
const keyOf = (voteId: string, round: number) => `plasterline.live.${voteId}.${round}`;

/** This phone's marks in a vote: it comes in, gets back what it placed before, and sends what is placed now. */
export function usePlacing(voteId: string, { round, state }: VoteStage) {
  const [mine, setMine] = useState<readonly Guess[] | null>(null);
  const [complaint, setComplaint] = useState("");

  const join = useCallback(async (): Promise<Reply> => {
    const reply = await sendJson("/api/live/join", { voteId });
    setComplaint(reply.ok ? "" : (reply.sentence ?? "The server did not let this page in."));
    if (reply.ok) setMine(reply.mine as readonly Guess[]);
    return reply;
  }, [voteId]);

  const [placing] = useState(() =>
    createPlacing({
      send: (of, at) => sendJson("/api/live/guess", { voteId, round: of, at }),
      rejoin: () => sendJson("/api/live/join", { voteId }),
      wait: (ms) => new Promise((resolve) => setTimeout(resolve, ms)),
      remember: (of, at) => remember(keyOf(voteId, of), at),
    }),
  );

  useEffect(() => {
    void join();
  }, [join]);
  useEffect(() => {
    if (!mine || placing.getState().round === round) return;
    const kept = mine.find((guess) => guess.round === round)?.at ?? null;
    placing.getState().enter(round, kept, state === "open" ? recall(keyOf(voteId, round)) : null);
  }, [mine, placing, round, state, voteId]);

  return { placing, mine, complaint, join };
}

function remember(key: string, at: Place | null): void {
  try {
    if (at) window.sessionStorage.setItem(key, JSON.stringify(at));
    else window.sessionStorage.removeItem(key);
  } catch {
    // A browser that keeps nothing sends the mark all the same.
  }
}

function recall(key: string): Place | null {
  try {
    const [x, y, ...more] = JSON.parse(window.sessionStorage.getItem(key) ?? "[]") as unknown[];
    return Number.isFinite(x) && Number.isFinite(y) && more.length === 0 ? [x as number, y as number] : null;
  } catch {
    return null;
  }
}
