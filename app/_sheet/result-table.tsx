"use client";

import type { Grade } from "@/lib/grading/grade";
import { capital } from "@/lib/plan/first-letter";
import { sayPoint } from "@/lib/plan/say-point";
import { planeOf } from "./plane-of";
import type { SetRoom } from "./set-room";
import "./result-table.css";
import { errorCells } from "./result-words";

type Props = {
  readonly paper: Pick<SetRoom, "exercise" | "points">;
  readonly grade: Grade;
  /** What the habits are called; left out, they have no column. */
  readonly habitNames?: Readonly<Record<string, string>>;
};

/** Every mark: how far off on the paper, what that is on the stage, the habit that explains it, its score. */
export function ResultTable({ paper: { exercise, points }, grade, habitNames }: Props) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reached by keys
    <section className="result-table" aria-label="Table of marks" tabIndex={0}>
      <table>
        <thead>
          <tr>
            <th scope="col">Mark</th>
            <th scope="col">{planeOf(exercise) === "plan" ? "In the picture" : "On paper"}</th>
            <th scope="col">Allowed</th>
            <th scope="col">Depth or height</th>
            <th scope="col">Across</th>
            {habitNames && <th scope="col">Habit</th>}
            <th scope="col">Score</th>
          </tr>
        </thead>
        <tbody>
          {grade.marks.map((mark) => {
            const point = points.get(mark.point);
            const [depth, across] = errorCells(mark, exercise.units);
            return (
              <tr key={mark.point}>
                <th scope="row">{point ? capital(sayPoint(point)) : mark.point}</th>
                <td>{mark.offMm === null ? "behind the eye" : `${mark.offMm.toFixed(1)} mm off`}</td>
                <td>{mark.toleranceMm.toFixed(1)} mm</td>
                <td>{depth}</td>
                <td>{across}</td>
                {habitNames && <td>{sayHabit(mark.habit, grade, habitNames)}</td>}
                <td>{Math.round(mark.score)}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </section>
  );
}

/** A habit that the set of marks claims by its name; one that only this mark speaks for as a question. */
function sayHabit(habit: string | null, { habits }: Grade, names: Readonly<Record<string, string>>): string {
  if (habit === null) return "";
  const name = names[habit] ?? habit;
  return habits.some(({ id }) => id === habit) ? name : `${name}?`;
}
