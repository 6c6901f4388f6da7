"use client";

import { useStore } from "zustand";
import type { LiveState } from "@/lib/classroom/live/live-state";
import type { DemonstrationStep } from "@/lib/drawing/demonstration/demonstration-step";
import type { Exercise } from "@/lib/exercise/exercise";
import { exercisePoints } from "@/lib/exercise/exercise-points";
import { judgeMark } from "@/lib/grading/judge-mark";
import type { Placing, PlacingStore } from "./placing";

type Props = {
  readonly exercise: Exercise;
  readonly point: DemonstrationStep;
  readonly placing: PlacingStore;
  readonly state: LiveState;
  readonly joined: boolean;
  readonly lost: boolean;
};

/** What has become of the mark, in a sentence. */
export function PhoneWords({ exercise, point, placing, state, joined, lost }: Props) {
  const mark = useStore(placing);
  const sentence = !joined
    ? "Coming in…"
    : state.state === "open"
      ? openWords(mark)
      : state.state === "revealed"
        ? `Look at the front: the marks are shown.${mark.kept ? "" : " Yours is not among them."} Talk it over.`
        : closedWords(exercise, point, state, mark);
  return (
    <>
      <p role="status" className="live-status" data-status={state.state === "open" ? mark.status : state.state}>
        {sentence}
      </p>
      {lost && joined && <p className="live-quiet">The line to the server is down. This page comes back by itself.</p>}
    </>
  );
}

function openWords({ at, status, sentence }: Placing): string {
  if (status === "refused") return sentence;
  if (!at) return "Read the place from the plan, and tap where it belongs.";
  if (status === "waiting") return `Not sent yet. ${sentence} Keep this page open: it is sent as soon as it can be.`;
  if (status === "sending") return "Sending your mark…";
  return "Your mark is in. You may move it until the marks are shown.";
}

function closedWords(exercise: Exercise, { point }: DemonstrationStep, state: LiveState, { kept }: Placing): string {
  const known = exercisePoints(exercise).get(point ?? "");
  if (!kept || !known?.picture || state.toleranceMm === null) return "The true point is shown: the red cross.";
  const { offMm } = judgeMark(exercise, known, kept, null, exercise.scaleRatio);
  if (offMm === null) return "Your mark means no place before the eye. The red cross is the true point.";
  const far = `${offMm.toFixed(1)} mm of paper from the true point`;
  return offMm <= state.toleranceMm
    ? `Right, within the tolerance: ${far}.`
    : `Your mark is ${far}; within ${state.toleranceMm.toFixed(1)} mm is near enough.`;
}
