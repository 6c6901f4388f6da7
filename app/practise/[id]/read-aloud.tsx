"use client";

import { useEffect, useState } from "react";
import type { ProjectedPoint } from "@/lib/exercise/exercise-points";
import type { GradedMark } from "@/lib/grading/grade";
import { usePractice, usePracticeRoom } from "./practice-context";
import { heightWords, picturePlaceWords, planWords, stepTitle } from "./step-words";

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
    const timer = setTimeout(() => setPlace(picturePlaceWords(pending, exercise.units)), AT_REST_MS);
    return () => clearTimeout(timer);
  }, [pending, exercise]);

  const dimensions = exercise.task.dimensions === "printed" ? `${planWords(asked, exercise.units)}.` : "";
  const words = graded
    ? `${stepTitle(asked)}: ${Math.round(graded.score)} of 100. ${graded.feedback}`
    : `Step ${step + 1} of ${exercise.task.marks.length}. Place ${stepTitle(asked)}. ${dimensions} ${heightWords(asked, exercise)}`;
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
