"use client";

import { useEffect, useMemo, useState } from "react";
import type { SheetPlace } from "@/app/_parts/course/course-words";
import { isFinished } from "@/app/_parts/kept-work/attempt";
import { SheetContext } from "@/app/_sheet/sheet-context";
import { createSheetViews } from "@/app/_sheet/sheet-views";
import type { Exercise } from "@/lib/exercise/exercise";
import { Board } from "./board";
import { HandedInPage } from "./handed-in";
import { PracticeContext, usePractice, usePracticeRoom } from "./practice-context";
import { practiceRoom } from "./practice-room";
import { Result } from "./result";
import { type Homework, ownDesk, tryDesk } from "./work-desk";
import "./practise.css";
import "./reading.css";

export type PractiseProps = {
  readonly exercise: Exercise;
  readonly sheet: SheetPlace;
  readonly next: { readonly id: string; readonly title: string } | null;
  /** The homework it is done for. */
  readonly homework?: Homework | null;
};

/** One exercise, from its first point to its result. */
export function Practise({ exercise, sheet, next, homework = null }: PractiseProps) {
  const tried = "own" in sheet ? sheet.own : undefined;
  const room = useMemo(
    () => practiceRoom(exercise, homework, tried === undefined ? ownDesk : tryDesk(tried)),
    [exercise, homework, tried],
  );
  const [views] = useState(() => createSheetViews(room.bounds.picture, room.bounds.plan));
  const onSheet = useMemo(() => ({ views, scaleRatio: exercise.scaleRatio }), [views, exercise]);

  useEffect(() => room.store.getState().open(), [room]);
  useEffect(() => room.work?.post.getState().open(), [room]);

  return (
    <PracticeContext value={room}>
      <SheetContext value={onSheet}>
        <Stage sheet={sheet} next={next} />
      </SheetContext>
    </PracticeContext>
  );
}

function Stage({ sheet, next }: Pick<PractiseProps, "sheet" | "next">) {
  const { work } = usePracticeRoom();
  const begun = usePractice((practice) => practice.attempt.marks.length);
  const done = usePractice((practice) => isFinished(practice.attempt, practice.asked));
  const finished = done && begun > 0;
  if (work && ((work.homework.held && finished) || (!finished && work.homework.attemptsLeft === 0)))
    return <HandedInPage work={work} finished={finished} />;
  return finished ? <Result sheet={sheet} next={next} /> : <Board sheet={sheet} />;
}
