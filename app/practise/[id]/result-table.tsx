"use client";

import type { Grade } from "@/lib/grading/grade";
import { planeOf } from "./plane-of";
import { usePracticeRoom } from "./practice-context";
import { errorCells } from "./result-words";
import { stepTitle } from "./step-words";

/** Every mark: how far off on the paper, what that is on the stage, its score. */
export function ResultTable({ grade }: { readonly grade: Grade }) {
  const { exercise, points } = usePracticeRoom();
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
            <th scope="col">Score</th>
          </tr>
        </thead>
        <tbody>
          {grade.marks.map((mark) => {
            const point = points.get(mark.point);
            const [depth, across] = errorCells(mark, exercise.units);
            return (
              <tr key={mark.point}>
                <th scope="row">{point ? stepTitle(point) : mark.point}</th>
                <td>{mark.offMm === null ? "behind the eye" : `${mark.offMm.toFixed(1)} mm off`}</td>
                <td>{mark.toleranceMm.toFixed(1)} mm</td>
                <td>{depth}</td>
                <td>{across}</td>
                <td>{Math.round(mark.score)}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </section>
  );
}
