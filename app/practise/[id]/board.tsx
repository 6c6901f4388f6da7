"use client";

import { useMemo, useRef, useState } from "react";
import { stepOf } from "@/app/_progress/attempt";
import type { NudgeStep } from "@/app/_sheet/constrain";
import { useMark } from "@/app/_sheet/use-mark";
import type { ProjectedPoint } from "@/lib/exercise/exercise-points";
import { drawnPoints } from "./drawn-points";
import { Notes } from "./notes";
import { PicturePane } from "./picture-pane";
import { PlanPane } from "./plan-pane";
import { usePractice, usePracticeRoom } from "./practice-context";
import { SheetFrame } from "./sheet-frame";
import { useGrade } from "./use-grade";

/** The drawing board: the sheet with its two drawings, and the step beside them. */
export function Board({ sheet }: { readonly sheet: readonly [number, number] }) {
  const { exercise, store, points, truth, bounds } = usePracticeRoom();
  const marks = usePractice((practice) => practice.attempt.marks);
  const correcting = usePractice((practice) => practice.attempt.correcting);
  const step = usePractice((practice) => stepOf(practice.attempt));
  const grade = useGrade();
  const [size, setSize] = useState<NudgeStep>("plain");
  const pane = useRef<HTMLDivElement>(null);

  const asked = points.get(exercise.task.marks[step] ?? "") as ProjectedPoint;
  // The point on hand is not "on the sheet" while its correction is on view: both its places are drawn.
  const drawn = useMemo(
    () => drawnPoints(exercise, truth, correcting ? marks.slice(0, -1) : marks),
    [exercise, truth, marks, correcting],
  );
  const plane = exercise.task.kind === "picture-to-plan" ? "plan" : "picture";
  const { begin, move, rest, commit, undo } = store.getState();
  const mark = useMark(
    {
      plane,
      bounds: bounds[plane],
      mark: () => store.getState().attempt.pending,
      start: (asked.over ? drawn.get(asked.over) : undefined) ?? [0, 0],
      begin,
      move,
      rest,
      commit,
      undo,
    },
    size,
  );
  const graded = correcting ? (grade.marks.find((each) => each.point === asked.name) ?? null) : null;

  return (
    <SheetFrame sheet={sheet} grade={grade}>
      <PicturePane mark={mark} asked={asked} drawn={drawn} graded={graded} frame={pane} />
      <PlanPane asked={asked} />
      <Notes asked={asked} step={step} graded={graded} grade={grade} mark={mark} size={size} onSize={setSize} />
    </SheetFrame>
  );
}
