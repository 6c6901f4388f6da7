"use client";

import { type ReactNode, useEffect, useRef } from "react";
import { Press } from "@/app/_parts/press";
import type { NudgeStep } from "@/app/_sheet/constrain";
import { planeOf } from "@/app/_sheet/plane-of";
import type { useMark } from "@/app/_sheet/use-mark";
import type { Exercise } from "@/lib/exercise/exercise";
import type { ProjectedPoint } from "@/lib/exercise/exercise-points";
import type { GradedMark } from "@/lib/grading/grade";
import { Hints } from "./hints";
import { NudgePad } from "./nudge-pad";
import { usePractice, usePracticeRoom } from "./practice-context";
import { ReadAloud } from "./read-aloud";
import { correctionWords, heightWords, planWords, readBackWords, stepTitle, worthWords } from "./step-words";
import type { Player } from "./use-player";

type Props = {
  readonly asked: ProjectedPoint;
  readonly step: number;
  readonly graded: GradedMark | null;
  readonly mark: ReturnType<typeof useMark>;
  readonly size: NudgeStep;
  readonly onSize: (size: NudgeStep) => void;
  readonly player: Player;
  /** The student's blue lines fix the point asked. */
  readonly fixed: boolean;
};

/** The step beside the drawings: what to place now, then what happened. */
export function Notes({ asked, step, graded, mark, size, onSize, player, fixed }: Props) {
  const { exercise } = usePracticeRoom();
  const count = exercise.task.marks.length;
  return (
    <section className="notes" aria-label="Step">
      <p className="small-lettering notes-step">
        Step {step + 1} of {count}
      </p>
      {graded ? (
        <Corrected graded={graded} asked={asked} step={step} player={player} />
      ) : (
        <Asked asked={asked} step={step} mark={mark} size={size} onSize={onSize} player={player} fixed={fixed} />
      )}
      <ReadAloud asked={asked} step={step} graded={graded} />
    </section>
  );
}

/** Why a place far upstage is allowed more on the plan. */
const JUDGED_IN_PICTURE =
  "It is checked in the picture, which shows the less of an error in depth the further upstage it is.";

/** The sentence that gives the place, or says where it is to be read. */
function placeWords(asked: ProjectedPoint, exercise: Exercise): string {
  if (planeOf(exercise) === "plan") return `${readBackWords(asked)}: it is lit in the picture.`;
  return exercise.task.dimensions === "printed"
    ? `${planWords(asked, exercise.units)}.`
    : "Read its place on the plan with the scale rule.";
}

type AskedProps = Pick<Props, "asked" | "step" | "mark" | "size" | "onSize" | "player" | "fixed">;

function Asked({ asked, step, mark, size, onSize, player, fixed }: AskedProps) {
  const { exercise, store, points, work } = usePracticeRoom();
  const before = points.get(exercise.task.marks[step - 1] ?? "");
  const placed = usePractice((practice) => practice.attempt.pending !== null);
  const canUndo = usePractice((practice) => practice.attempt.earlier.length > 0);
  const reading = planeOf(exercise) === "plan";
  return (
    <>
      <h2 className="notes-title">{stepTitle(asked)}</h2>
      <Words>
        {work?.homework.held && before && (
          <p role="status" className="notes-worth">
            Set down: {stepTitle(before).replace(/^The/, "the")}.
          </p>
        )}
        {step === 0 && exercise.brief !== "" && <p>{exercise.brief}</p>}
        <p className="notes-place">
          {placeWords(asked, exercise)} {heightWords(asked, exercise)}
        </p>
        <p className="notes-worth">{reading ? JUDGED_IN_PICTURE : worthWords(asked, exercise)}</p>
        {fixed && (
          <p className="notes-fixed" role="status">
            Your blue lines fix this point already: it lies where they cross.
          </p>
        )}
        <Hints asked={asked} player={player} />
      </Words>
      <NudgePad mark={mark} size={size} onSize={onSize} />
      <div className="notes-presses">
        <Press onClick={() => store.getState().undo()} disabled={!canUndo}>
          Undo
        </Press>
        <Press weight="main" className="grow" onClick={() => store.getState().commit()} disabled={!placed}>
          {placed ? "Set it down" : reading ? "Place it on the plan" : "Place it in the picture"}
        </Press>
      </div>
    </>
  );
}

function Corrected({
  graded,
  asked,
  step,
  player,
}: Pick<Props, "asked" | "step" | "player"> & { readonly graded: GradedMark }) {
  const { exercise, store, points } = usePracticeRoom();
  const next = points.get(exercise.task.marks[step + 1] ?? "");
  const press = useRef<HTMLButtonElement>(null);
  useEffect(() => press.current?.focus({ preventScroll: true }), []);
  const reading = planeOf(exercise) === "plan";
  const [where, ...rest] = correctionWords(graded);
  return (
    <>
      <h2 className="notes-title">
        {stepTitle(asked)}: {Math.round(graded.score)}
        <span className="aloud"> of 100</span>
      </h2>
      <Words>
        <p className="notes-where">{where}</p>
        {rest.map((words) => (
          <p key={words}>{words}</p>
        ))}
        {graded.habitPlace && graded.words.means !== "" && (
          <p>The dashed lozenge {reading ? "on the plan" : "on the sheet"} is where that idea puts it.</p>
        )}
      </Words>
      <div className="notes-presses">
        {exercise.task.kind === "plan-to-picture" && <Press onClick={player.play}>Show how</Press>}
        <Press ref={press} weight="main" className="grow" onClick={() => store.getState().next()}>
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
