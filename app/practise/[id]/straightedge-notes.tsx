"use client";

import { useState } from "react";
import { Press } from "@/app/_parts/press";
import type { CatchPoint } from "@/app/_sheet/catch-points";
import type { Plane } from "@/app/_sheet/view";
import { usePractice, usePracticeRoom } from "./practice-context";

type Props = {
  /** What can be caught on each drawing. */
  readonly points: Readonly<Record<Plane, readonly CatchPoint[]>>;
  readonly onAway: () => void;
};

/** The straightedge in words: draw a line by choosing its two points, and rub lines out. */
export function StraightedgeNotes({ points, onAway }: Props) {
  const { store } = usePracticeRoom();
  const lines = usePractice((practice) => practice.attempt.lines);
  const [plane, setPlane] = useState<Plane>("picture");
  const [from, setFrom] = useState(0);
  const [to, setTo] = useState(1);
  const here = points[plane];
  const [first, second] = [here[from], here[to]];
  const turnTo = (other: Plane) => {
    setPlane(other);
    setFrom(0);
    setTo(1);
  };
  const draw = () => {
    if (!first || !second || first === second) return;
    store.getState().draw({ plane, from: first.at, to: second.at, through: [first.name, second.name] });
  };
  return (
    <div className="straightedge-notes">
      <h2 className="notes-title">Straightedge</h2>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reached by keys */}
      <section className="notes-words" aria-label="Lines" tabIndex={0}>
        <p>
          Draw from point to point, in the picture or the plan: tap the one, then the other, or drag. What lies near is
          caught; elsewhere the end is free. The line runs on past both.
        </p>
        <div className="line-choice">
          <label className="point-list">
            In
            <select
              className="look-list"
              value={plane}
              onChange={(event) => turnTo(event.target.value === "plan" ? "plan" : "picture")}
            >
              <option value="picture">the picture</option>
              <option value="plan">the plan</option>
            </select>
          </label>
          <PointList label="From" points={here} chosen={from} onChoose={setFrom} />
          <PointList label="Through" points={here} chosen={to} onChoose={setTo} />
          <Press weight="small" onClick={draw} disabled={!first || !second || from === to}>
            Draw this line
          </Press>
        </div>
        {lines.length > 0 && (
          <ol className="line-list">
            {lines.map((line) => (
              <li key={line.id}>
                <span>
                  {line.id}. {line.plane === "plan" ? "Plan: " : ""}
                  {line.through[0]} to {line.through[1]}
                </span>
                <Press
                  weight="small"
                  aria-label={`Rub out line ${line.id}`}
                  onClick={() => store.getState().rub(line.id)}
                >
                  Rub out
                </Press>
              </li>
            ))}
          </ol>
        )}
      </section>
      <div className="notes-presses">
        <Press disabled={lines.length === 0} onClick={() => store.getState().rubAll()}>
          Rub all out
        </Press>
        <Press weight="main" className="grow" onClick={onAway}>
          Back to the mark
        </Press>
      </div>
    </div>
  );
}

type ListProps = {
  readonly label: string;
  readonly points: readonly CatchPoint[];
  readonly chosen: number;
  readonly onChoose: (index: number) => void;
};

function PointList({ label, points, chosen, onChoose }: ListProps) {
  return (
    <label className="point-list">
      {label}
      <select className="look-list" value={chosen} onChange={(event) => onChoose(Number(event.target.value))}>
        {points.map((point, i) => (
          <option key={point.name} value={i}>
            {point.name}
          </option>
        ))}
      </select>
    </label>
  );
}
