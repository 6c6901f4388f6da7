"use client";

import type { SetRoom } from "@/app/_sheet/set-room";
import type { Grade, GradedMark } from "@/lib/grading/grade";
import { capital } from "@/lib/plan/first-letter";
import { sayPoint } from "@/lib/plan/say-point";

type Props = { readonly room: Pick<SetRoom, "points" | "exercise">; readonly grade: Grade };

/** Each mark in words, as at its step on screen: where, what it means, why, and how to find it; the worst stands open. */
export function MarkWords({ room: { points, exercise }, grade }: Props) {
  const worst = worstOf(grade.marks);
  return (
    <section className="mark-words" aria-labelledby="mark-words">
      <h2 id="mark-words" className="lettering">
        Mark by mark
      </h2>
      <ol>
        {grade.marks.map(({ point, offMm, toleranceMm, words }) => {
          const known = points.get(point);
          const missed = offMm === null || offMm > toleranceMm;
          return (
            <li key={point}>
              <details open={point === worst}>
                <summary>
                  <span className="point-number">{exercise.task.marks.indexOf(point) + 1}</span>
                  <span className="mark-name">{known ? capital(sayPoint(known)) : point}</span>
                  <span className="mark-where" data-missed={missed}>
                    {words.where}
                  </span>
                </summary>
                {[words.means, words.why, words.how].map((each) => each !== "" && <p key={each}>{each}</p>)}
              </details>
            </li>
          );
        })}
      </ol>
    </section>
  );
}

/** The mark that misses by the most of what a hand is allowed; null where none misses. */
function worstOf(marks: readonly GradedMark[]): string | null {
  const missed = marks.map(({ point, offMm, toleranceMm }) => ({
    point,
    share: (offMm ?? Number.POSITIVE_INFINITY) / toleranceMm,
  }));
  const worst = missed.reduce((most, each) => (each.share > most.share ? each : most), { point: "", share: 1 });
  return worst.point === "" ? null : worst.point;
}
