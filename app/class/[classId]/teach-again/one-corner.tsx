"use client";

import { useId, useMemo, useState } from "react";
import { AtPoint, TrueMark } from "@/app/_sheet/end-marks";
import { ResultDrawing, shownRatio } from "@/app/_sheet/result-drawing";
import { setRoom } from "@/app/_sheet/set-room";
import { toPaper } from "@/app/_sheet/view";
import { SMALL_CLASS } from "@/lib/classroom/teach-again/item-analysis";
import type { ClassMark } from "@/lib/classroom/teach-again/read-teach-again";
import { SHARES, saySpread } from "@/lib/classroom/teach-again/say-figures";
import { ellipseAxes, type Spread, spreadOf } from "@/lib/classroom/teach-again/spread-ellipse";
import type { Exercise } from "@/lib/exercise/exercise";
import type { Grade } from "@/lib/grading/grade";
import { habitName } from "@/lib/habits/habit-name";
import { toPaperMm } from "@/lib/measure/scale";
import { capital, inside } from "@/lib/plan/first-letter";
import { sayPoint } from "@/lib/plan/say-point";
import "./one-corner.css";

type Props = {
  readonly exercise: Exercise;
  readonly marks: readonly (readonly [point: string, marks: readonly ClassMark[]])[];
  /** How many are in the class. */
  readonly small: number;
};

/** The whole class's marks for one point over the true drawing: the cloud, its mean, and how it spreads. */
export function OneCorner({ exercise, marks, small }: Props) {
  const [point, setPoint] = useState(marks.find(([, each]) => each.length > 0)?.[0] ?? "");
  const pick = useId();
  const paper = useMemo(() => setRoom(exercise), [exercise]);
  const nobody = useMemo(() => emptyGrade(exercise.id), [exercise]);
  const cloud = marks.find(([name]) => name === point)?.[1] ?? [];
  const spread = spreadOf(cloud.map(({ at }) => at));
  const truth = paper.truth.get(point);
  const scaleRatio = shownRatio(paper);
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
      <div className="one-corner">
        <ResultDrawing
          paper={paper}
          grade={nobody}
          label={`The true drawing with ${cloud.length} marks for ${inside(nameOf(point))}. The words below tell where they lie.`}
        >
          <SpreadMarks spread={spread} scaleRatio={scaleRatio} />
          {cloud.map(({ handInId, at }) => (
            <AtPoint key={handInId} at={at} scaleRatio={scaleRatio}>
              <circle r={4} className="cloud-mark" />
            </AtPoint>
          ))}
          {truth && <TrueMark at={truth} scaleRatio={scaleRatio} />}
        </ResultDrawing>
      </div>
      <p>{saySpread(spread, (metres) => toPaperMm(metres, exercise.scaleRatio))}</p>
      {truth && spread.kind === "spread" && <p>{sayOff(spread.mean, truth, exercise.scaleRatio)}</p>}
      {cloud.length < SMALL_CLASS && <p>So few marks, of a class of {small}, say little of any spread.</p>}
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

type SpreadProps = { readonly spread: Spread; readonly scaleRatio: number };

/** The mean as a square, and the ellipses that hold half and nearly all of marks spread like these. */
function SpreadMarks({ spread, scaleRatio }: SpreadProps) {
  if (spread.kind === "few") return null;
  const [x, y] = toPaper(spread.mean, scaleRatio);
  const mean = (
    <AtPoint at={spread.mean} scaleRatio={scaleRatio}>
      <path d="M-6 -6H6V6H-6Z" className="cloud-mean" />
    </AtPoint>
  );
  if (spread.kind === "one-place") return mean;
  const turnDeg = (-spread.turn * 180) / Math.PI;
  return (
    <>
      {SHARES.map((share) => {
        const [long, short] = ellipseAxes(spread, share).map((metres) => toPaperMm(metres, scaleRatio));
        return (
          <ellipse
            key={share}
            cx={x}
            cy={y}
            rx={long}
            ry={short}
            transform={`rotate(${turnDeg} ${x} ${y})`}
            className={share === SHARES[0] ? "cloud-ring" : "cloud-ring outer"}
          />
        );
      })}
      {mean}
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
