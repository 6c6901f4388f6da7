"use client";

import { useEffect, useMemo, useState } from "react";
import { useLive } from "@/app/_live/use-live";
import { Press } from "@/app/_parts/press";
import { SheetContext } from "@/app/_sheet/sheet-context";
import { createSheetViews } from "@/app/_sheet/sheet-views";
import type { LiveState } from "@/lib/classroom/live/live-state";
import { placeStep } from "@/lib/classroom/live/place-step";
import type { Exercise } from "@/lib/exercise/exercise";
import { PhoneBoard } from "./phone-board";
import { usePlacing } from "./use-placing";

/** Any bounds will do until the screen is known. */
const UNKNOWN = { left: -1, right: 1, bottom: 0, top: 1 } as const;

type Props = {
  readonly voteId: string;
  readonly exercise: Exercise;
  readonly point: string;
  readonly first: LiveState;
};

/** One vote on a phone, from coming in to the true point, and on to the next. */
export function PhoneVote({ voteId, exercise, point, first }: Props) {
  const [joined, setJoined] = useState(false);
  const { state, lost } = useLive(voteId, first, joined);
  const { placing, mine, complaint, join } = usePlacing(voteId, state);
  const [views] = useState(() => createSheetViews(UNKNOWN, UNKNOWN));
  const sheet = useMemo(() => ({ views, scaleRatio: exercise.scaleRatio }), [views, exercise]);
  const step = useMemo(() => placeStep(exercise, point), [exercise, point]);

  useEffect(() => setJoined(mine !== null), [mine]);
  useEffect(() => {
    if (state.next) window.location.replace(`/live/${state.next}`);
  }, [state.next]);

  if (!step) return null;
  return (
    <SheetContext value={sheet}>
      <PhoneBoard exercise={exercise} step={step} placing={placing} state={state} joined={joined} lost={lost}>
        {complaint && (
          <p role="alert" className="live-complaint">
            {complaint} <Press onClick={() => void join()}>Try again</Press>
          </p>
        )}
      </PhoneBoard>
    </SheetContext>
  );
}
