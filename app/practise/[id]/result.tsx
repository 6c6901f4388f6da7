"use client";

import Link from "next/link";
import { useEffect, useMemo, useRef } from "react";
import { type SheetPlace, sheetWords } from "@/app/_parts/course/course-words";
import { markSetOf } from "@/app/_parts/kept-work/attempt";
import { LookDisclosure } from "@/app/_parts/look/look-switch";
import { Press, PressLink } from "@/app/_parts/press";
import { saveFile } from "@/app/_parts/save-file";
import { Finished } from "@/app/_sheet/finished";
import { planeOf } from "@/app/_sheet/plane-of";
import { ResultDrawing } from "@/app/_sheet/result-drawing";
import { ResultTable } from "@/app/_sheet/result-table";
import { eyeWords, habitWords, strayWords } from "@/app/_sheet/result-words";
import { printScale } from "@/lib/measure/scale";
import { AnotherPress } from "./another-press";
import { HandInStrip, HomeworkPresses } from "./handed-in";
import { pageOf } from "./page-of";
import { usePractice, usePracticeRoom } from "./practice-context";
import { useGrade } from "./use-grade";
import "./result.css";

type Props = {
  readonly sheet: SheetPlace;
  readonly next: { readonly id: string; readonly title: string } | null;
};

/** The finished sheet: the whole drawing with its corrections, the marks, the score, what to make of it. */
export function Result({ sheet, next }: Props) {
  const room = usePracticeRoom();
  const { exercise, store, points, work } = room;
  const marks = usePractice((practice) => practice.attempt.marks);
  const hints = usePractice((practice) => practice.attempt.hints);
  const grade = useGrade();
  const title = useRef<HTMLHeadingElement>(null);
  useEffect(() => title.current?.focus({ preventScroll: true }), []);
  const reading = planeOf(exercise) === "plan";
  const [printed, shown] = [pageOf("/sheet", sheet, exercise.id), pageOf("/demonstrate", sheet, exercise.id)];
  const score = Math.round(grade.score ?? 0);
  const words = useMemo(() => strayWords(grade.marks, exercise.units), [grade, exercise]);
  const habits = useMemo(() => habitWords(grade.habits, points), [grade, points]);
  const eye = eyeWords(grade.impliedViewer, exercise.viewer, exercise);
  const within = grade.marks.filter((mark) => mark.offMm !== null && mark.offMm <= mark.toleranceMm).length;

  const download = () => {
    const set = markSetOf({ exercise: exercise.id, version: exercise.version, marks, hints }, exercise.scale);
    saveFile(`${exercise.id}.marks.json`, `${JSON.stringify(set, null, 2)}\n`);
  };
  return (
    <main className="result">
      <header className="table-edge">
        <Link href="/" className="plain-link lettering" prefetch={false}>
          Plasterline
        </Link>
        <span className="table-title">
          {exercise.title}, {"variant" in sheet || "own" in sheet || work ? "" : "sheet "}
          {work ? work.homework.title : sheetWords(sheet)}
        </span>
        <LookDisclosure />
      </header>
      <div className="result-sheet ruled">
        <div className="result-drawing">
          <ResultDrawing paper={room} grade={grade} />
          <p className="drawing-title">
            <span className="lettering">
              {reading ? "Plan" : "Picture"} {printScale(exercise.scale)}
            </span>{" "}
            <span className="shown-at">graphite: yours; red and dashed: true</span>
          </p>
        </div>
        <section className="result-words" aria-label="Result">
          <h1 ref={title} tabIndex={-1} className="result-score">
            <span className="small-lettering">Score</span> <span className="result-number">{score}</span>{" "}
            <span className="result-of">of 100</span>
          </h1>
          {work && <HandInStrip work={work} />}
          <p>
            {within} of {grade.marks.length} marks lie within what a hand is allowed.
          </p>
          {[...words, ...habits].map((each) => (
            <p key={each}>{each}</p>
          ))}
          {eye !== "" && <p>{eye}</p>}
          {"own" in sheet && !work && (
            <p className="result-quiet">
              This plan is in no course: what you draw of it does not count in your record. Set as homework, it does.
            </p>
          )}
          {work ? (
            <HomeworkPresses work={work} onSave={download} />
          ) : (
            <div className="result-presses">
              <Onward sheet={sheet} next={next} />
              <Press onClick={() => store.getState().again()}>{reading ? "Read it again" : "Draw it again"}</Press>
              <Press onClick={download}>Save the marks</Press>
              {printed !== null && <PressLink href={printed}>Print this sheet</PressLink>}
              {shown !== null && <PressLink href={shown}>Demonstrate it</PressLink>}
              {!("own" in sheet) && <PressLink href="/record">Your record</PressLink>}
            </div>
          )}
        </section>
        <ResultTable paper={room} grade={grade} />
        <Finished paper={room} grade={grade} />
      </div>
    </main>
  );
}

/** The ways on: through the course or out of it, and to more of the same. */
function Onward({ sheet, next }: Props) {
  if ("own" in sheet)
    return (
      <>
        <PressLink href="/draft" weight="main">
          To the drafting desk
        </PressLink>
        <AnotherPress sheet={sheet} />
      </>
    );
  if ("variant" in sheet)
    return (
      <>
        <AnotherPress sheet={sheet} />
        <PressLink href="/">Back to the course</PressLink>
      </>
    );
  return (
    <>
      {next ? (
        <PressLink href={`/practise/${next.id}`} weight="main">
          Next: {next.title}
        </PressLink>
      ) : (
        <PressLink href="/" weight="main">
          To the list of exercises
        </PressLink>
      )}
      <AnotherPress sheet={sheet} />
    </>
  );
}
