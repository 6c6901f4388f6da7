"use client";

import { useId, useMemo, useState } from "react";
import { TrueMark } from "@/app/_sheet/end-marks";
import { ResultDrawing, shownRatio } from "@/app/_sheet/result-drawing";
import { setRoom } from "@/app/_sheet/set-room";
import { SMALL_CLASS } from "@/lib/classroom/teach-again/item-analysis";
import type { ClassMark } from "@/lib/classroom/teach-again/read-teach-again";
import { saySpread } from "@/lib/classroom/teach-again/say-figures";
import { spreadOf } from "@/lib/classroom/teach-again/spread-ellipse";
import type { Exercise } from "@/lib/exercise/exercise";
import type { Grade } from "@/lib/grading/grade";
import { habitName } from "@/lib/habits/habit-name";
import { toPaperMm } from "@/lib/measure/scale";
import { capital, inside } from "@/lib/plan/first-letter";
import { sayPoint } from "@/lib/plan/say-point";
import { closeBy } from "./close-by";
import { CloseFrame, CloudMark, SpreadMarks } from "./cloud";
import "./one-corner.css";

type Props = {
  readonly exercise: Exercise;
  readonly marks: readonly (readonly [point: string, marks: readonly ClassMark[]])[];
  /** How many are in the class. */
  readonly students: number;
};

/** The whole class's marks for one point over the true drawing: the cloud, its mean, and how it spreads. */
export function OneCorner({ exercise, marks, students }: Props) {
  const [point, setPoint] = useState(marks.find(([, each]) => each.length > 0)?.[0] ?? "");
  const pick = useId();
  const paper = useMemo(() => setRoom(exercise), [exercise]);
  const nobody = useMemo(() => emptyGrade(exercise.id), [exercise]);
  const cloud = marks.find(([name]) => name === point)?.[1] ?? [];
  const spread = spreadOf(cloud.map(({ at }) => at));
  const truth = paper.truth.get(point);
  const scaleRatio = shownRatio(paper);
  const close = closeBy(cloud, spread, truth, exercise.scaleRatio);
  const nameOf = (name: string) => {
    const known = paper.points.get(name);
    return known ? capital(sayPoint(known)) : name;
  };
  return (
    <>
      <div className="class-pick">
        <label htmlFor={pick}>Point</label>
        <select id={pick} value={point} onChange={(event) => setPoint(event.target.value)}>
          {marks.map(([name, each]) => (
            <option key={name} value={name}>
              {nameOf(name)} ({each.length})
            </option>
          ))}
        </select>
      </div>
      {[close, undefined].map((part) => (
        <div key={part ? "close" : "whole"} className={part ? "one-corner" : "one-corner whole"}>
          <ResultDrawing
            paper={paper}
            grade={nobody}
            label={
              part
                ? `${cloud.length} marks for ${inside(nameOf(point))}, seen from close by. The words below tell where they lie.`
                : "Where that is on the whole sheet."
            }
            {...(part ? { part } : {})}
          >
            {part ? (
              <>
                <SpreadMarks spread={spread} scaleRatio={scaleRatio} />
                {cloud.map((mark) => (
                  <CloudMark key={mark.handInId} mark={mark} scaleRatio={scaleRatio} />
                ))}
                {truth && <TrueMark at={truth} scaleRatio={scaleRatio} />}
              </>
            ) : (
              <CloseFrame bounds={close} scaleRatio={scaleRatio} />
            )}
          </ResultDrawing>
        </div>
      ))}
      <p className="class-quiet">
        Dots: marks. Open rings: marks that a habit explains. Blue square: their mean. Red cross: the true place.
      </p>
      <p>{saySpread(spread, (metres) => toPaperMm(metres, exercise.scaleRatio))}</p>
      {truth && spread.kind === "spread" && <p>{sayOff(spread.mean, truth, exercise.scaleRatio)}</p>}
      {cloud.length < SMALL_CLASS && <p>So few marks, of a class of {students}, say little of any spread.</p>}
      <details>
        <summary>Whose marks these are</summary>
        <ul>
          {cloud.map(({ handInId, name, habit }) => (
            <li key={handInId}>
              {name}
              {habit !== null && `: ${inside(habitName(habit))}`}
            </li>
          ))}
        </ul>
      </details>
    </>
  );
}

function sayOff(mean: readonly [number, number], truth: readonly [number, number], scaleRatio: number): string {
  const [across, up] = [mean[0] - truth[0], mean[1] - truth[1]].map((metres) => toPaperMm(metres, scaleRatio));
  const part = (mm: number, more: string, less: string) => `${Math.abs(mm).toFixed(1)} mm ${mm >= 0 ? more : less}`;
  return `On average they lie ${part(across ?? 0, "right", "left")} and ${part(up ?? 0, "above", "below")} the true place, on paper.`;
}

function emptyGrade(exercise: string): Grade {
  return { exercise, outcome: "unready", score: null, marks: [], missing: [], habits: [], impliedViewer: null };
}
