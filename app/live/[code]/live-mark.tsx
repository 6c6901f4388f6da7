"use client";

import { useMemo } from "react";
import { useStore } from "zustand";
import { OwnMark, PlainLine, TrueMark } from "@/app/_sheet/end-marks";
import { useSheet } from "@/app/_sheet/sheet-context";
import type { LiveState } from "@/lib/classroom/live/live-state";
import type { DemonstrationStep } from "@/lib/drawing/demonstration/demonstration-step";
import type { Exercise } from "@/lib/exercise/exercise";
import { exercisePoints } from "@/lib/exercise/exercise-points";
import { listEdges } from "@/lib/plan/list-edges";
import type { Place, PlacingStore } from "./placing";

type Props = {
  readonly exercise: Exercise;
  readonly point: DemonstrationStep;
  readonly placing: PlacingStore;
  readonly state: LiveState;
  readonly held?: boolean | undefined;
};

/** The mark with the lines it would make; and once it is shown, the true point beside it. */
export function LiveMark({ exercise, point, placing, state, held = false }: Props) {
  const { scaleRatio } = useSheet();
  const at = useStore(placing, (now) => now.at);
  const ends = useMemo(() => endsOf(exercise, point), [exercise, point]);
  return (
    <g data-live-mark="">
      {at &&
        ends.map(([id, end]) => <PlainLine key={id} from={end} to={at} scaleRatio={scaleRatio} className="own-line" />)}
      {at && state.truth && <PlainLine from={at} to={state.truth} scaleRatio={scaleRatio} className="off-line" />}
      {state.truth && <TrueMark at={state.truth} scaleRatio={scaleRatio} />}
      {at && <OwnMark at={at} scaleRatio={scaleRatio} held={held} />}
    </g>
  );
}

/** The points on the sheet that lines run to from the one asked, on the drawing that is marked. */
function endsOf(exercise: Exercise, { point, shown }: DemonstrationStep): readonly (readonly [string, Place])[] {
  const points = exercisePoints(exercise);
  return listEdges(exercise.plan, points).flatMap(({ id, from, to }): (readonly [string, Place])[] => {
    const end = from === point ? to : to === point ? from : null;
    const known = end !== null && shown.placed.includes(end) ? points.get(end) : undefined;
    if (!known) return [];
    if (exercise.task.kind === "picture-to-plan") return [[id, [known.at[0], known.at[1]]]];
    return known.picture ? [[id, known.picture]] : [];
  });
}
