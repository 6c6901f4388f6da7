"use client";

import { useEffect, useState } from "react";
import type { VoteResult } from "@/lib/classroom/live/vote-result";
import type { VoteStage } from "@/lib/classroom/live/vote-stage";

/** How long to wait before asking anew when the server could not be reached, in milliseconds. */
const AGAIN_MS = 1000;

/** What the vote has come to, asked for whenever it has moved on. Null while nothing may be seen. */
export function useResult(voteId: string, { round, state }: VoteStage): VoteResult | null {
  const [result, setResult] = useState<VoteResult | null>(null);
  useEffect(() => {
    let gone = false;
    let again: ReturnType<typeof setTimeout> | undefined;
    const ask = async () => {
      try {
        const answer = await fetch(`/api/live/result?vote=${encodeURIComponent(voteId)}`);
        if (!answer.ok) throw new Error("No result.");
        const found = (await answer.json()) as VoteResult;
        // An answer that was asked for before the last move says nothing of this one.
        if (found.stage.round !== round || found.stage.state !== state) throw new Error("No result yet.");
        if (!gone) setResult(found);
      } catch {
        if (!gone) again = setTimeout(ask, AGAIN_MS);
      }
    };
    setResult(null);
    if (state !== "open") void ask();
    return () => {
      gone = true;
      clearTimeout(again);
    };
  }, [voteId, round, state]);
  return result;
}
