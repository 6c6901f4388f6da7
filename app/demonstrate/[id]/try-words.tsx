"use client";

import { useMemo } from "react";
import { Press } from "@/app/_parts/press";
import type { GradedMark } from "@/lib/grading/grade";
import { gradeMarks } from "@/lib/grading/grade-marks";
import { habitName } from "@/lib/habits/habit-name";
import { capital } from "@/lib/plan/first-letter";
import { useDemonstration, useRoom, useStep } from "./demonstration-context";
import { LABEL_ID } from "./guess-label";

/** The words of "you try": what is asked, whose guesses there are, and what became of them once the true point is shown. */
export function TryWords() {
  const { exercise, store } = useRoom();
  const step = useStep();
  const trying = useDemonstration((demonstration) => demonstration.trying);
  const guesses = useDemonstration((demonstration) => demonstration.guesses);
  const chosen = useDemonstration((demonstration) => demonstration.chosen);
  const { show, takeBack, choose, leaveTry } = store.getState();
  const graded = useMemo(
    () =>
      guesses.flatMap(({ at }) => {
        if (step.point === null) return [];
        const set = {
          format: "plasterline.marks/1",
          exercise: exercise.id,
          marks: [{ point: step.point, at }],
        } as const;
        return gradeMarks(exercise, set).marks;
      }),
    [exercise, guesses, step.point],
  );
  const waiting = trying === "waiting";
  return (
    <>
      <ul className="guess-row" aria-label="Guesses">
        {guesses.map(({ label }, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: guesses are in the order called out and only the last is taken back
          <li key={`${label}.${i}`}>
            {waiting ? (
              <span className="guess-chip">{label}</span>
            ) : (
              <button type="button" className="guess-chip" aria-pressed={i === chosen} onClick={() => choose(i)}>
                {label}: {sayOff(graded[i])}
              </button>
            )}
          </li>
        ))}
      </ul>
      {waiting ? (
        <div className="try-row">
          <p className="demonstration-sentence">
            {guesses.length === 0 ? "Where does it come? Call it out." : "Whose is nearest?"}
          </p>
          <label className="guess-label">
            Initials <input id={LABEL_ID} maxLength={3} size={3} autoComplete="off" />
          </label>
          <Press onClick={takeBack} disabled={guesses.length === 0}>
            Take back
          </Press>
          <Press onClick={leaveTry}>Leave</Press>
          <Press weight="main" onClick={show}>
            Show the true point
          </Press>
        </div>
      ) : (
        <p className="demonstration-sentence" data-verdict="">
          {guesses.length === 0 ? "The true point is marked in red." : sayGuess(graded[chosen] ?? null)}
        </p>
      )}
    </>
  );
}

function sayOff(graded: GradedMark | undefined): string {
  return graded?.offMm == null ? "not on the stage" : `${graded.offMm.toFixed(1)} mm off`;
}

/** What a guess means on the stage, and the idea that it looks like. */
function sayGuess(graded: GradedMark | null): string {
  if (!graded) return "";
  const { where, means } = graded.words;
  const habit = graded.habit === null ? "" : `It looks like this: ${habitName(graded.habit)}.`;
  return [capital(where), means, habit].filter((words) => words !== "").join(" ");
}
