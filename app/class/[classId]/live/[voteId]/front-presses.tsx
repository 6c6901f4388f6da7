"use client";

import Link from "next/link";
import { useState } from "react";
import { sendJson } from "@/app/_live/send-json";
import { Press } from "@/app/_parts/press";
import type { LiveState } from "@/lib/classroom/live/live-state";
import { type Advice, stepVote, type VoteMove } from "@/lib/classroom/live/vote-stage";
import type { Exercise } from "@/lib/exercise/exercise";
import { exercisePoints } from "@/lib/exercise/exercise-points";
import { sayPoint } from "@/lib/plan/say-point";

type Props = {
  readonly classId: string;
  readonly voteId: string;
  readonly exercise: Exercise;
  readonly point: string;
  readonly state: LiveState;
  readonly advice: Advice | null;
};

/** What the teacher can do next. The press that is advised is the dark one. */
export function FrontPresses({ classId, voteId, exercise, point, state, advice }: Props) {
  const [busy, setBusy] = useState(false);
  const [complaint, setComplaint] = useState("");
  const next = nextPoint(exercise, point);

  const send = async (path: string, body: unknown) => {
    if (busy) return null;
    setBusy(true);
    setComplaint("");
    const reply = await sendJson(path, body);
    setBusy(false);
    // A vote that had moved on already shows so by itself.
    if (!reply.ok && reply.reason !== "elsewhere") setComplaint(reply.sentence ?? "That did not work. Try once more.");
    return reply.ok ? reply : null;
  };
  const move = (which: VoteMove) => send("/api/live/move", { voteId, round: state.round, move: which });
  const goOn = async (to: string) => {
    const reply = await send("/class/live", { classId, exerciseId: exercise.id, point: to });
    if (reply) window.location.assign(`/class/${classId}/live/${String(reply.voteId)}`);
  };
  const press = (which: VoteMove, words: string, main: boolean) =>
    stepVote(state, which) && (
      <Press weight={main ? "main" : "plain"} aria-disabled={busy} onClick={() => void move(which)}>
        {words}
      </Press>
    );
  return (
    <div className="front-presses">
      {press("show", "Show the marks", true)}
      {press("again", "Place it again", state.state === "revealed" && advice === "again")}
      {press(
        "tell",
        state.state === "open" ? "Show marks and true point" : "Show the true point",
        state.state === "revealed" && advice !== "again",
      )}
      {state.state === "closed" && next && (
        <Press weight="main" aria-disabled={busy} onClick={() => void goOn(next.name)}>
          Next: {sayPoint(next)}
        </Press>
      )}
      <Link href={`/demonstrate/${exercise.id}`} className="plain-link" prefetch={false}>
        Demonstrate
      </Link>
      <Link href={`/class/${classId}/live`} className="plain-link" prefetch={false}>
        Another point
      </Link>
      <p role="alert" className="front-complaint">
        {complaint}
      </p>
    </div>
  );
}

function nextPoint(exercise: Exercise, point: string) {
  const { marks } = exercise.task;
  const points = exercisePoints(exercise);
  const name = marks.slice(marks.indexOf(point) + 1).find((each) => points.get(each)?.picture);
  return name === undefined ? null : (points.get(name) ?? null);
}
