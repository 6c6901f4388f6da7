"use client";

import { useEffect, useRef } from "react";
import { hintsTaken } from "@/app/_parts/kept-work/attempt";
import { Press } from "@/app/_parts/press";
import type { ProjectedPoint } from "@/lib/exercise/exercise-points";
import { sayHow } from "@/lib/grading/say-how";
import { HINT_COST, MOST_HINTS } from "@/lib/grading/score";
import { usePractice, usePracticeRoom } from "./practice-context";
import type { Player } from "./use-player";

/** Help before the mark, at its price: first the method in words, then its lines on the sheet. */
export function Hints({ asked, player }: { readonly asked: ProjectedPoint; readonly player: Player }) {
  const { exercise, store } = usePracticeRoom();
  const taken = usePractice((practice) => hintsTaken(practice.attempt, asked.name));
  const words = useRef<HTMLParagraphElement>(null);
  const fresh = useRef(taken);
  useEffect(() => {
    if (taken !== fresh.current) words.current?.scrollIntoView({ block: "nearest" });
    fresh.current = taken;
  }, [taken]);
  if (exercise.task.hints === "none" || exercise.task.kind !== "plan-to-picture") return null;
  const take = () => {
    store.getState().hint(asked.name);
    if (taken === MOST_HINTS - 1) player.play();
  };
  return (
    <div className="hints">
      {taken > 0 && (
        <p role="status" ref={words}>
          {sayHow({ point: asked }, exercise)}
        </p>
      )}
      {taken < MOST_HINTS ? (
        <Press weight="small" onClick={take}>
          {taken === 0 ? "Hint: the method" : "Hint: its lines"}, costs {HINT_COST} of 100
        </Press>
      ) : (
        <Press weight="small" onClick={player.play}>
          See the lines again
        </Press>
      )}
    </div>
  );
}
