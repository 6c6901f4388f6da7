"use client";

import { useId, useMemo, useState } from "react";
import { AtPoint, TrueMark } from "@/app/_sheet/end-marks";
import { ResultDrawing, shownRatio } from "@/app/_sheet/result-drawing";
import { setRoom } from "@/app/_sheet/set-room";
import { type Bounds, toPaper } from "@/app/_sheet/view";
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

/** The close view is so many times as wide as high, and shows this much paper at least, millimetres. */
const WIDE = 1.6;
const LEAST_HALF_MM = 6;
const ROOM_MM = 3;

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
                {cloud.map(({ handInId, at }) => (
                  <AtPoint key={handInId} at={at} scaleRatio={scaleRatio}>
                    <circle r={4.5} className="cloud-mark" />
                  </AtPoint>
                ))}
                {truth && <TrueMark at={truth} scaleRatio={scaleRatio} />}
              </>
            ) : (
              <Frame bounds={close} scaleRatio={scaleRatio} />
            )}
          </ResultDrawing>
        </div>
      ))}
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

/** The part of the sheet that holds the marks, the larger ellipse and the truth, with paper round them. */
function closeBy(
  cloud: readonly ClassMark[],
  spread: Spread,
  truth: readonly [number, number] | undefined,
  scaleRatio: number,
): Bounds {
  const mm = scaleRatio / 1000;
  const reach = spread.kind === "spread" ? ellipseAxes(spread, SHARES[1])[0] : 0;
  const about = spread.kind === "few" ? [] : [spread.mean];
  const places = [...cloud.map(({ at }) => at), ...(truth ? [truth] : []), ...about];
  const [xs, ys] = [places.map(([x]) => x), places.map(([, y]) => y)];
  const ends = (values: readonly number[], mean: number | undefined): readonly [number, number] =>
    mean === undefined
      ? [Math.min(...values), Math.max(...values)]
      : [Math.min(...values, mean - reach), Math.max(...values, mean + reach)];
  const [[left, right], [bottom, top]] = [ends(xs, about[0]?.[0]), ends(ys, about[0]?.[1])];
  const halfUp = Math.max((top - bottom) / 2, (right - left) / 2 / WIDE, LEAST_HALF_MM * mm) + ROOM_MM * mm;
  const [x, y] = [(left + right) / 2, (bottom + top) / 2];
  return { left: x - halfUp * WIDE, right: x + halfUp * WIDE, bottom: y - halfUp, top: y + halfUp };
}

/** The part that is seen from close by, on the whole sheet. */
function Frame({ bounds, scaleRatio }: { readonly bounds: Bounds; readonly scaleRatio: number }) {
  const [x, y] = toPaper([bounds.left, bounds.top], scaleRatio);
  const [right, bottom] = toPaper([bounds.right, bounds.bottom], scaleRatio);
  return <rect x={x} y={y} width={right - x} height={bottom - y} className="cloud-frame" />;
}

function sayOff(mean: readonly [number, number], truth: readonly [number, number], scaleRatio: number): string {
  const [across, up] = [mean[0] - truth[0], mean[1] - truth[1]].map((metres) => toPaperMm(metres, scaleRatio));
  const part = (mm: number, more: string, less: string) => `${Math.abs(mm).toFixed(1)} mm ${mm >= 0 ? more : less}`;
  return `On average they lie ${part(across ?? 0, "right", "left")} and ${part(up ?? 0, "above", "below")} the true place, on paper.`;
}

function emptyGrade(exercise: string): Grade {
  return { exercise, outcome: "unready", score: null, marks: [], missing: [], habits: [], impliedViewer: null };
}
