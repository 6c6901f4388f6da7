"use client";

import { useEffect, useMemo, useState } from "react";
import type { SheetPlace } from "@/app/_parts/course/course-words";
import { isFinished } from "@/app/_parts/kept-work/attempt";
import { SheetContext } from "@/app/_sheet/sheet-context";
import { createSheetViews } from "@/app/_sheet/sheet-views";
import type { Exercise } from "@/lib/exercise/exercise";
import { Board } from "./board";
import { PracticeContext, usePractice } from "./practice-context";
import { practiceRoom } from "./practice-room";
import { Result } from "./result";
import "./practise.css";
import "./reading.css";

export type PractiseProps = {
  readonly exercise: Exercise;
  readonly sheet: SheetPlace;
  readonly next: { readonly id: string; readonly title: string } | null;
};

/** One exercise, from its first point to its result. */
export function Practise({ exercise, sheet, next }: PractiseProps) {
  const room = useMemo(() => practiceRoom(exercise), [exercise]);
  const [views] = useState(() => createSheetViews(room.bounds.picture, room.bounds.plan));
  const onSheet = useMemo(() => ({ views, scaleRatio: exercise.scaleRatio }), [views, exercise]);

  useEffect(() => room.store.getState().open(), [room]);

  return (
    <PracticeContext value={room}>
      <SheetContext value={onSheet}>
        <Stage sheet={sheet} next={next} />
      </SheetContext>
    </PracticeContext>
  );
}

function Stage({ sheet, next }: Pick<PractiseProps, "sheet" | "next">) {
  const asked = usePractice((practice) => practice.attempt.marks.length);
  const finished = usePractice((practice) => isFinished(practice.attempt, practice.asked));
  return finished && asked > 0 ? <Result sheet={sheet} next={next} /> : <Board sheet={sheet} />;
}
