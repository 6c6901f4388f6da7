"use client";

import { useEffect, useMemo, useRef } from "react";
import { Press, PressLink } from "@/app/_parts/press";
import { saveFile } from "@/app/_parts/save-file";
import { When } from "@/app/_parts/when";
import { type CheckedDrawing, marksOf } from "@/app/_photo/checked-drawing";
import { Finished } from "@/app/_sheet/finished";
import { ResultTable } from "@/app/_sheet/result-table";
import { eyeWords, habitWords, strayWords } from "@/app/_sheet/result-words";
import type { Exercise } from "@/lib/exercise/exercise";
import { printScale } from "@/lib/measure/scale";
import { useCheckRoom } from "../check-context";
import { CheckFrame } from "../check-frame";
import { gradeDrawing } from "../grade-drawing";
import { HandInPart } from "./hand-in-part";
import { MarkWords } from "./mark-words";
import { ReportPress } from "./report-press";
import { TruthOver } from "./truth-over";
import "./check-result.css";

type Props = { readonly exercise: Exercise; readonly drawing: CheckedDrawing };

/** The drawing marked: the truth in red over the pencil, each error in words, the habits, and what only paper shows. */
export function CheckResult({ exercise, drawing }: Props) {
  const { homework } = useCheckRoom();
  if (homework?.held) return <Held exercise={exercise} drawing={drawing} />;
  return <Marked exercise={exercise} drawing={drawing} />;
}

function Marked({ exercise, drawing }: Props) {
  const { store } = useCheckRoom();
  const { room, grade, remarks, eyeRefused } = useMemo(() => gradeDrawing(exercise, drawing), [exercise, drawing]);
  const title = useRef<HTMLHeadingElement>(null);
  useEffect(() => title.current?.focus({ preventScroll: true }), []);
  const words = useMemo(() => strayWords(grade.marks, exercise.units), [grade, exercise]);
  const habits = useMemo(() => habitWords(grade.habits, room.points), [grade, room]);
  const eye = eyeWords(grade.impliedViewer, room.exercise.viewer, exercise);
  const within = grade.marks.filter(({ offMm, toleranceMm }) => offMm !== null && offMm <= toleranceMm).length;
  return (
    <CheckFrame title={exercise.title}>
      <div className="check-result ruled">
        <TruthOver room={room} grade={grade} drawing={drawing} />
        <section className="check-result-words" aria-label="Result">
          <h1 ref={title} tabIndex={-1} className="check-score">
            <span className="small-lettering">Score</span>{" "}
            <span className="check-number">{Math.round(grade.score ?? 0)}</span> <span>of 100</span>
          </h1>
          <p>
            {within} of {grade.marks.length} marks lie within what a hand is allowed at {printScale(drawing.scale)}.
            {grade.missing.length > 0 && ` ${sayMissing(grade.missing.length)}`}
          </p>
          {[...habits, ...words].map((each) => (
            <p key={each}>{each}</p>
          ))}
          {eye !== "" && <p>{eye}</p>}
          {eyeRefused && <p className="check-note">{eyeRefused} It is marked for the exercise’s own eye.</p>}
          {drawing.ownEye && !eyeRefused && <p>It is marked for the eye that your horizon and your back wall give.</p>}
          {remarks.length > 0 && (
            <>
              <h2 className="small-lettering">What the lines show</h2>
              {remarks.map((each) => (
                <p key={each}>{each}</p>
              ))}
            </>
          )}
          <HandInPart exercise={exercise} drawing={drawing} />
          <div className="check-result-presses">
            <Press weight="main" onClick={() => store.getState().startAnew()}>
              Check another
            </Press>
            <Press onClick={() => store.getState().reopen()}>Back to the points</Press>
            <ReportPress drawing={drawing} />
            <Press onClick={() => saveMarks(exercise, drawing)}>Save the marks</Press>
            <PressLink href={`/practise/${exercise.id}`}>Practise it</PressLink>
          </div>
        </section>
        <MarkWords room={room} grade={grade} />
        <ResultTable paper={room} grade={grade} />
        <Finished paper={room} grade={grade} />
      </div>
    </CheckFrame>
  );
}

/** Homework whose corrections wait: that it is in, and when there will be more to see. */
function Held({ exercise, drawing }: Props) {
  const { store, homework } = useCheckRoom();
  const head = useRef<HTMLHeadingElement>(null);
  useEffect(() => head.current?.focus(), []);
  return (
    <CheckFrame title={exercise.title}>
      <div className="check-paper ruled">
        <div className="check-words">
          <h1 ref={head} tabIndex={-1} className="lettering">
            Every point is confirmed
          </h1>
          <HandInPart exercise={exercise} drawing={drawing} />
          {homework?.dueAt && (
            <p>
              Your score and the corrections can be seen here after <When at={homework.dueAt} />.
            </p>
          )}
          <div className="check-presses">
            <PressLink href="/class" weight="main">
              To your class
            </PressLink>
            <Press onClick={() => saveMarks(exercise, drawing)}>Save the marks</Press>
            <Press onClick={() => store.getState().startAnew()}>Another photograph</Press>
          </div>
        </div>
      </div>
    </CheckFrame>
  );
}

function saveMarks(exercise: Exercise, drawing: CheckedDrawing): void {
  saveFile(`${exercise.id}.marks.json`, `${JSON.stringify(marksOf(drawing), null, 2)}\n`);
}

function sayMissing(count: number): string {
  return count === 1 ? "One point is not drawn and counts as 0." : `${count} points are not drawn and count as 0.`;
}
