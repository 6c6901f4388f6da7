"use client";

import type { SetRoom } from "@/app/_sheet/set-room";
import type { Grade } from "@/lib/grading/grade";
import { capital } from "@/lib/plan/first-letter";
import { sayPoint } from "@/lib/plan/say-point";

type Props = { readonly room: Pick<SetRoom, "points" | "exercise">; readonly grade: Grade };

/** Each mark in words, as at its step on screen: where, what it means, why, and how to find it; those that missed stand open. */
export function MarkWords({ room: { points, exercise }, grade }: Props) {
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
              <details open={missed}>
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
