"use client";

import { memo, useMemo } from "react";
import { DrawList } from "@/app/_sheet/draw-list";
import { AtPoint } from "@/app/_sheet/end-marks";
import type { DisplayList } from "@/lib/drawing/display-list";
import { drawPlace } from "@/lib/drawing/draw-place";
import type { NamedPoint } from "@/lib/plan/named-point";
import { usePracticeRoom } from "./practice-context";

/** The point asked, lit in the plan, with its two dimensions where the plan prints them. */
export const AskedInPlan = memo(function AskedInPlan({
  point,
  plan,
}: {
  readonly point: NamedPoint;
  readonly plan: DisplayList;
}) {
  const { exercise } = usePracticeRoom();
  const { scaleRatio, task } = exercise;
  const place = useMemo(
    () => (task.dimensions === "printed" ? drawPlace(exercise, point.at, point.name, { over: plan }) : []),
    [exercise, task, point, plan],
  );
  return (
    <g data-asked={point.name}>
      <DrawList list={place} scaleRatio={scaleRatio} />
      <AtPoint at={[point.at[0], point.at[1]]} scaleRatio={scaleRatio}>
        <circle r={8} className="lit-point" />
        <circle r={1.8} className="mark-point" />
      </AtPoint>
    </g>
  );
});
