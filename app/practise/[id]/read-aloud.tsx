"use client";

import { useEffect, useState } from "react";
import type { Exercise } from "@/lib/exercise/exercise";
import type { ProjectedPoint } from "@/lib/exercise/exercise-points";
import type { GradedMark } from "@/lib/grading/grade";
import { planeOf } from "./plane-of";
import { usePractice, usePracticeRoom } from "./practice-context";
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
  const { exercise } = usePracticeRoom();
  const pending = usePractice((practice) => practice.attempt.pending);
  const [place, setPlace] = useState("");

  useEffect(() => {
    if (!pending) {
      setPlace("");
      return;
    }
    const sayPlace = planeOf(exercise) === "plan" ? planPlaceWords : picturePlaceWords;
    const timer = setTimeout(() => setPlace(sayPlace(pending, exercise.units)), AT_REST_MS);
    return () => clearTimeout(timer);
  }, [pending, exercise]);

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
