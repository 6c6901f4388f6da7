"use client";

import { memo, useMemo } from "react";
import { AtPoint, OwnMark, PlainLine } from "@/app/_sheet/end-marks";
import type { ProjectedPoint } from "@/lib/exercise/exercise-points";
import type { GradedMark } from "@/lib/grading/grade";
import { standsAt } from "@/lib/grading/judge-mark";
import { project } from "@/lib/perspective/project";
import type { PlanPoint } from "@/lib/stage/frame";
import { usePracticeRoom } from "./practice-context";

/** The point asked, lit in the picture; once its mark is set down, the place that was read, as the picture would show it. */
export const AskedInPicture = memo(function AskedInPicture({
  point,
  graded,
}: {
  readonly point: ProjectedPoint;
  readonly graded: GradedMark | null;
}) {
  const { exercise } = usePracticeRoom();
  const { scaleRatio } = exercise;
  const read = useMemo(() => {
    const seen = graded && project(exercise.viewer, standsAt(exercise, point, graded.at as PlanPoint));
    return seen?.seen ? seen.at : null;
  }, [exercise, point, graded]);
  if (!point.picture) return null;
  return (
    <g data-asked={point.name}>
      {read && <PlainLine from={read} to={point.picture} scaleRatio={scaleRatio} className="off-line" />}
      <AtPoint at={point.picture} scaleRatio={scaleRatio}>
        <circle r={8} className="lit-point" />
        <circle r={1.8} className="mark-point" />
      </AtPoint>
      {read && <OwnMark at={read} scaleRatio={scaleRatio} />}
    </g>
  );
});
