"use client";

import { type KeyboardEvent, type RefObject, useMemo } from "react";
import { DrawList } from "@/app/_sheet/draw-list";
import { Pane } from "@/app/_sheet/pane";
import { ZOOM_STEP } from "@/app/_sheet/pane-state";
import { useSheet } from "@/app/_sheet/sheet-context";
import type { useMark } from "@/app/_sheet/use-mark";
import { drawSheetPicture } from "@/lib/drawing/draw-sheet-picture";
import type { ProjectedPoint } from "@/lib/exercise/exercise-points";
import type { GradedMark } from "@/lib/grading/grade";
import { Correction } from "./correction";
import { drawFigureForScale, drawSetSoFar } from "./drawings";
import type { DrawnPoints } from "./drawn-points";
import { PendingMark } from "./pending-mark";
import { usePractice, usePracticeRoom } from "./practice-context";

type Props = {
  readonly mark: ReturnType<typeof useMark>;
  readonly asked: ProjectedPoint;
  readonly drawn: DrawnPoints;
  readonly graded: GradedMark | null;
  readonly frame: RefObject<HTMLDivElement | null>;
};

/** The picture, where the marks are placed. */
export function PicturePane({ mark, asked, drawn, graded, frame }: Props) {
  const room = usePracticeRoom();
  const { exercise } = room;
  const standing = usePractice((practice) => practice.attempt.figure);
  const { views } = useSheet();
  const { scaleRatio } = exercise;
  const empty = useMemo(() => drawSheetPicture(exercise), [exercise]);
  const figure = useMemo(() => drawFigureForScale(exercise), [exercise]);
  const set = useMemo(() => drawSetSoFar(room, drawn, empty), [room, drawn, empty]);

  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === "+" || event.key === "=") views.getState().zoom("picture", ZOOM_STEP);
    else if (event.key === "-") views.getState().zoom("picture", 1 / ZOOM_STEP);
    else if (event.key === "0") views.getState().whole("picture");
    else if (!graded) mark.onKeyDown(event);
  };

  return (
    <div
      ref={frame}
      className="picture-place"
      role="application"
      // biome-ignore lint/a11y/noNoninteractiveTabindex: see above
      tabIndex={0}
      aria-label="Picture. Arrows move the mark, Shift for large steps, Alt for fine ones, Enter sets it down, Backspace takes a move back, plus and minus zoom."
      onKeyDown={onKeyDown}
    >
      <Pane
        plane="picture"
        drawingId="picture-drawing"
        onSecondFinger={mark.letGo}
        aria-hidden="true"
        {...(graded ? {} : mark.svg)}
      >
        <DrawList list={empty} scaleRatio={scaleRatio} />
        {standing && <DrawList list={figure} scaleRatio={scaleRatio} />}
        <DrawList list={set} scaleRatio={scaleRatio} />
        {graded ? (
          <Correction graded={graded} drawn={drawn} />
        ) : (
          <PendingMark asked={asked.name} drawn={drawn} held={mark.pointing?.held ?? false} />
        )}
      </Pane>
    </div>
  );
}
