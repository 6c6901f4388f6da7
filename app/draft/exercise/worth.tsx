"use client";

import { useEffect, useMemo, useState } from "react";
import { UNIT_WORDS } from "@/app/_parts/course/course-words";
import { Press } from "@/app/_parts/press";
import type { Draft } from "@/lib/draft/draft";
import { besideLevel } from "@/lib/draft/exercise-desk/beside-level";
import { type Weighed, weighExercise } from "@/lib/draft/exercise-desk/weigh-exercise";
import { faultsOf } from "@/lib/exercise/check-sense";
import type { Exercise } from "@/lib/exercise/exercise";
import { habitName } from "@/lib/habits/habit-name";
import { revealedHabits } from "@/lib/habits/reveal";
import { printLength } from "@/lib/measure/print-length";

/** The figures are worked out once the author has rested so long, milliseconds. */
const REST_MS = 300;
/** With more marks than this the habits take a while to tell apart, and are looked for only when asked. */
const MOST_AT_ONCE = 60;

/** How hard the exercise is, and which wrong ideas it can bring to light. */
export function Worth({ draft }: { readonly draft: Draft }) {
  const { exercise } = draft;
  const rested = useRested(exercise);
  const [wanted, setWanted] = useState<Exercise | null>(null);
  const sound = useMemo(() => faultsOf(rested).length === 0, [rested]);
  const weighed = useMemo(() => (sound ? weighExercise(rested) : null), [rested, sound]);
  const beside = useMemo(() => (sound ? besideLevel(rested) : []), [rested, sound]);
  const looked = sound && (rested.task.marks.length <= MOST_AT_ONCE || wanted === rested);
  const habits = useMemo(() => (looked ? revealedHabits(rested) : []), [rested, looked]);
  return (
    <section aria-labelledby="worth">
      <h3 id="worth" className="lettering">
        What it is worth
      </h3>
      {!weighed && <p>It is weighed once nothing is left to be mended.</p>}
      {weighed && <Figures weighed={weighed} exercise={rested} />}
      {weighed && (
        <>
          <p>
            Beside the app's own exercises of {UNIT_WORDS[rested.unit].title.toLowerCase()}, level {rested.level}:{" "}
            {beside.length === 0 ? "it asks the same." : ""}
          </p>
          {beside.length > 0 && (
            <ul className="worth-list">
              {beside.map((each) => (
                <li key={each}>{each}</li>
              ))}
            </ul>
          )}
        </>
      )}
      {weighed && !looked && (
        <div className="draft-presses">
          <Press weight="small" onClick={() => setWanted(rested)}>
            Look for the habits it can reveal
          </Press>
        </div>
      )}
      {looked && habits.length === 0 && <p>Its marks can reveal no habit: ask for more, or farther upstage.</p>}
      {looked && habits.length > 0 && (
        <>
          <p>It can reveal these habits, each told from the others:</p>
          <ul className="worth-list" aria-label="Habits it can reveal">
            {habits.map((id) => (
              <li key={id}>{habitName(id)}</li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
}

function Figures({ weighed, exercise }: { readonly weighed: Weighed; readonly exercise: Exercise }) {
  const { marks, finest, farthest } = weighed;
  const near = (metres: number) => printLength(metres, exercise.units, "near");
  return (
    <ul className="worth-list">
      <li>
        {marks} {marks === 1 ? "mark" : "marks"} to place.
      </li>
      {finest && (
        <li>
          The finest is {finest.point}: it may be {finest.toleranceMm.toFixed(1)} mm of paper off.
        </li>
      )}
      {farthest && (
        <li>
          At the farthest, {farthest.point}, 1 mm of paper means {near(farthest.worth.across)} across
          {farthest.worth.depth === null ? "" : ` and ${near(farthest.worth.depth)} of depth`} on the stage.
        </li>
      )}
    </ul>
  );
}

/** The exercise as it was when its author last rested. */
function useRested(exercise: Exercise): Exercise {
  const [rested, setRested] = useState(exercise);
  useEffect(() => {
    const later = setTimeout(() => setRested(exercise), REST_MS);
    return () => clearTimeout(later);
  }, [exercise]);
  return rested;
}
