"use client";

import { useEffect, useState } from "react";
import type { Place } from "@/app/_parts/kept-work/attempt";
import { planeOf } from "@/app/_sheet/plane-of";
import type { Exercise } from "@/lib/exercise/exercise";
import type { ProjectedPoint } from "@/lib/exercise/exercise-points";
import type { GradedMark } from "@/lib/grading/grade";
import { usePracticeRoom } from "./practice-context";
import {
  heightWords,
  picturePlaceWords,
  planPlaceWords,
  planWords,
  readBackWords,
  seenWords,
  stepTitle,
} from "./step-words";

/** A mark at rest for so long has its place read aloud; while it moves nothing is said. */
const AT_REST_MS = 500;

/** The live regions: the step, the mark's place, the result. Nothing here is shown. */
export function ReadAloud({
  asked,
  step,
  graded,
}: {
  readonly asked: ProjectedPoint;
  readonly step: number;
  readonly graded: GradedMark | null;
}) {
  const { exercise, store } = usePracticeRoom();
  const [place, setPlace] = useState("");

  // The mark is watched from outside React's rendering: a drag comes here at every frame.
  useEffect(() => {
    const sayPlace = planeOf(exercise) === "plan" ? planPlaceWords : picturePlaceWords;
    let timer: ReturnType<typeof setTimeout> | undefined;
    const rest = (pending: Place | null) => {
      clearTimeout(timer);
      if (pending) timer = setTimeout(() => setPlace(sayPlace(pending, exercise.units)), AT_REST_MS);
      else setPlace("");
    };
    rest(store.getState().attempt.pending);
    const stop = store.subscribe(({ attempt: { pending } }, before) => {
      if (pending !== before.attempt.pending) rest(pending);
    });
    return () => {
      stop();
      clearTimeout(timer);
    };
  }, [store, exercise]);

  const words = graded
    ? `${stepTitle(asked)}: ${Math.round(graded.score)} of 100. ${graded.feedback}`
    : `Step ${step + 1} of ${exercise.task.marks.length}. ${askWords(asked, exercise)} ${heightWords(asked, exercise)}`;
  return (
    <>
      <p className="aloud" role="status" data-aloud="step">
        {words}
      </p>
      <p className="aloud" role="status" data-aloud="place">
        {place}
      </p>
    </>
  );
}

/** What is asked, with what the sheet tells of it: the printed place, or the one in the picture that is read back. */
function askWords(asked: ProjectedPoint, exercise: Exercise): string {
  if (planeOf(exercise) === "plan") return `${readBackWords(asked)}. ${seenWords(asked, exercise.units)}`;
  const printed = exercise.task.dimensions === "printed" ? ` ${planWords(asked, exercise.units)}.` : "";
  return `Place ${stepTitle(asked)}.${printed}`;
}
