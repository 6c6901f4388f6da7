"use client";

import { useMemo } from "react";
import { putPoint } from "@/lib/draft/exercise-desk/ask";
import { askablePoints, type PointUse } from "@/lib/draft/exercise-desk/askable-points";
import { thingKey } from "@/lib/draft/sense/note-place";
import { sayThing } from "@/lib/draft/sense/say-thing";
import { capital } from "@/lib/plan/first-letter";
import { sayPoint } from "@/lib/plan/say-point";
import type { ExercisePart } from "./exercise-part";

const USES: readonly PointUse[] = ["asked", "given", "free"];
const USE_WORDS: Readonly<Record<PointUse, string>> = { asked: "asked", given: "given", free: "neither" };

/** Every point that can be asked, thing by thing: asked, given on the sheet from the start, or neither. */
export function PointsAsked({ draft, apply }: ExercisePart) {
  const { exercise } = draft;
  const groups = useMemo(() => askablePoints(exercise), [exercise]);
  return (
    <section aria-labelledby="points-asked">
      <h3 id="points-asked" className="lettering">
        Points of the plan
      </h3>
      {groups.length === 0 && <p>There is no point on the plan that the picture shows.</p>}
      {groups.map(({ thing, points }) => {
        const asked = points.filter(({ use }) => use === "asked").length;
        const given = points.filter(({ use }) => use === "given").length;
        return (
          <details key={thingKey(thing)} className="points-fold">
            <summary>
              {capital(sayThing(exercise.plan, thing))}: {asked} of {points.length} asked
              {given > 0 ? `, ${given} given` : ""}
            </summary>
            {points.map(({ point, use }) => (
              <fieldset key={point.name} className="point-uses">
                <legend>{capital(sayPoint(point))}</legend>
                {USES.map((each) => (
                  <label key={each}>
                    <input
                      type="radio"
                      name={`use ${point.name}`}
                      checked={use === each}
                      onChange={() => apply(putPoint(exercise.task, point.name, each))}
                    />
                    {USE_WORDS[each]}
                  </label>
                ))}
              </fieldset>
            ))}
          </details>
        );
      })}
    </section>
  );
}
