"use client";

import { type ReactNode, useEffect, useRef } from "react";
import { Press } from "@/app/_parts/press";
import type { NudgeStep } from "@/app/_sheet/constrain";
import type { useMark } from "@/app/_sheet/use-mark";
import type { ProjectedPoint } from "@/lib/exercise/exercise-points";
import type { Grade, GradedMark } from "@/lib/grading/grade";
import { NudgePad } from "./nudge-pad";
import { usePractice, usePracticeRoom } from "./practice-context";
import { ReadAloud } from "./read-aloud";
import { heightWords, planWords, stepTitle, worthWords } from "./step-words";

type Props = {
  readonly asked: ProjectedPoint;
  readonly step: number;
  readonly graded: GradedMark | null;
  readonly grade: Grade;
  readonly mark: ReturnType<typeof useMark>;
  readonly size: NudgeStep;
  readonly onSize: (size: NudgeStep) => void;
};

/** The step beside the drawings: what to place now, then what happened. */
export function Notes({ asked, step, graded, grade, mark, size, onSize }: Props) {
  const { exercise } = usePracticeRoom();
  const count = exercise.task.marks.length;
  return (
    <section className="notes" aria-label="Step">
      <p className="small-lettering notes-step">
        Step {step + 1} of {count}
      </p>
      {graded ? (
        <Corrected graded={graded} asked={asked} step={step} grade={grade} />
      ) : (
        <Asked asked={asked} step={step} mark={mark} size={size} onSize={onSize} />
      )}
      <ReadAloud asked={asked} step={step} graded={graded} />
    </section>
  );
}

function Asked({ asked, step, mark, size, onSize }: Pick<Props, "asked" | "step" | "mark" | "size" | "onSize">) {
  const { exercise, store } = usePracticeRoom();
  const placed = usePractice((practice) => practice.attempt.pending !== null);
  const canUndo = usePractice((practice) => practice.attempt.earlier.length > 0);
  const printed = exercise.task.dimensions === "printed";
  return (
    <>
      <h2 className="notes-title">{stepTitle(asked)}</h2>
      <Words>
        {step === 0 && exercise.brief !== "" && <p>{exercise.brief}</p>}
        <p className="notes-place">
          {printed ? `${planWords(asked, exercise.units)}.` : "Read its place on the plan with the scale rule."}{" "}
          {heightWords(asked, exercise)}
        </p>
        <p className="notes-worth">{worthWords(asked, exercise)}</p>
      </Words>
      <NudgePad mark={mark} size={size} onSize={onSize} />
      <div className="notes-presses">
        <Press onClick={() => store.getState().undo()} disabled={!canUndo}>
          Undo
        </Press>
        <Press weight="main" className="grow" onClick={() => store.getState().commit()} disabled={!placed}>
          {placed ? "Set it down" : "Place it in the picture"}
        </Press>
      </div>
    </>
  );
}

function Corrected({
  graded,
  asked,
  step,
  grade,
}: Pick<Props, "asked" | "step" | "grade"> & { readonly graded: GradedMark }) {
  const { exercise, store, points } = usePracticeRoom();
  const next = points.get(exercise.task.marks[step + 1] ?? "");
  const press = useRef<HTMLButtonElement>(null);
  useEffect(() => press.current?.focus({ preventScroll: true }), []);
  const { where, means, why, how } = graded.words;
  return (
    <>
      <h2 className="notes-title">
        {stepTitle(asked)}: {Math.round(graded.score)}
        <span className="aloud"> of 100</span>
      </h2>
      <Words>
        <p className="notes-where">{where}</p>
        {[means, why, how]
          .filter((words) => words !== "")
          .map((words) => (
            <p key={words}>{words}</p>
          ))}
      </Words>
      <div className="notes-presses">
        <Press ref={press} weight="main" className="grow" onClick={() => store.getState().next(grade.score)}>
          {next ? `Next: ${stepTitle(next).replace(/^The/, "the")}` : "See the whole drawing"}
        </Press>
      </div>
    </>
  );
}

/** What is said of the step; it scrolls where there is little room, so it can be reached by keys. */
function Words({ children }: { readonly children: ReactNode }) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reached by keys
    <section className="notes-words" aria-label="About this step" tabIndex={0}>
      {children}
    </section>
  );
}
