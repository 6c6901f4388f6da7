"use client";

import { type KeyboardEvent, type ReactNode, useCallback, useMemo } from "react";
import { BlueLines, LayingEdge } from "@/app/_sheet/blue-lines";
import { ConstructionDrawing } from "@/app/_sheet/construction-drawing";
import { DrawList } from "@/app/_sheet/draw-list";
import { Magnifier } from "@/app/_sheet/magnifier";
import { Pane } from "@/app/_sheet/pane";
import { ZOOM_STEP } from "@/app/_sheet/pane-state";
import { useSheet } from "@/app/_sheet/sheet-context";
import type { useMark } from "@/app/_sheet/use-mark";
import type { useStraightedge } from "@/app/_sheet/use-straightedge";
import { drawSheetPicture } from "@/lib/drawing/draw-sheet-picture";
import type { ProjectedPoint } from "@/lib/exercise/exercise-points";
import type { GradedMark } from "@/lib/grading/grade";
import { Correction } from "./correction";
import { drawFigureForScale, drawSetSoFar } from "./drawings";
import type { DrawnPoints } from "./drawn-points";
import { LegibleScale } from "./legible-scale";
import { PendingMark } from "./pending-mark";
import { usePractice, usePracticeRoom } from "./practice-context";
import type { Played } from "./use-player";
import { zoomAboutMark } from "./zoom-about-mark";

type Props = {
  /** Set while the pointer places the mark here. */
  readonly mark: ReturnType<typeof useMark> | null;
  /** Set while keys place it here. */
  readonly keys: ((event: KeyboardEvent) => void) | null;
  readonly held: boolean;
  /** Set while the straightedge is laid here. */
  readonly edge: ReturnType<typeof useStraightedge> | null;
  readonly asked: ProjectedPoint;
  readonly drawn: DrawnPoints;
  readonly graded: GradedMark | null;
  readonly magnified: boolean;
  /** A construction as far as it is drawn, or null. */
  readonly played: Played | null;
  readonly tools: ReactNode;
};

const DRAWING_ID = "picture-drawing";
const ZOOM_KEYS: Readonly<Record<string, number>> = { "+": ZOOM_STEP, "=": ZOOM_STEP, "-": 1 / ZOOM_STEP };
const KEYS_WORDS =
  "Picture. Arrows move the mark, Shift for large steps, Alt for fine ones, Enter sets it down, Backspace takes a move back, plus and minus zoom.";

/** The picture, where the marks are placed. */
export function PicturePane({ keys, tools, ...drawing }: Props) {
  const { views } = useSheet();
  const { store } = usePracticeRoom();
  const onKeyDown = (event: KeyboardEvent) => {
    const zoom = ZOOM_KEYS[event.key];
    if (zoom) zoomAboutMark(views, store.getState().attempt.pending, zoom);
    else if (event.key === "0") views.getState().whole("picture");
    else keys?.(event);
  };
  return (
    <div className="picture-place">
      <div
        className="picture-keys"
        role="application"
        // biome-ignore lint/a11y/noNoninteractiveTabindex: a drawing surface worked by keys is an application region
        tabIndex={0}
        aria-label={KEYS_WORDS}
        onKeyDown={onKeyDown}
      >
        <LegibleScale plane="picture">
          <PictureDrawing {...drawing} />
        </LegibleScale>
      </div>
      {tools}
    </div>
  );
}

function PictureDrawing({ mark, held, edge, asked, drawn, graded, magnified, played }: Omit<Props, "keys" | "tools">) {
  const room = usePracticeRoom();
  const { exercise, bounds, store } = room;
  const { scaleRatio } = exercise;
  const standing = usePractice((practice) => practice.attempt.figure);
  const allLines = usePractice((practice) => practice.attempt.lines);
  const lines = useMemo(() => allLines.filter((line) => line.plane === "picture"), [allLines]);
  const empty = useMemo(() => drawSheetPicture(exercise), [exercise]);
  const figure = useMemo(() => drawFigureForScale(exercise), [exercise]);
  const set = useMemo(() => drawSetSoFar(room, drawn, empty), [room, drawn, empty]);
  const pending = useCallback(() => store.getState().attempt.pending, [store]);

  return (
    <Pane
      plane="picture"
      drawingId={DRAWING_ID}
      onSecondFinger={edge?.letGo ?? mark?.letGo}
      aria-hidden="true"
      {...(edge?.svg ?? mark?.svg ?? {})}
      live={
        <>
          {!graded && <PendingMark asked={asked.name} drawn={drawn} held={held} />}
          {edge && <LayingEdge laying={edge.laying} bounds={bounds.picture} scaleRatio={scaleRatio} />}
        </>
      }
      over={
        magnified && !graded ? (
          <Magnifier plane="picture" drawingId={DRAWING_ID} mark={pending} watch={store.subscribe} />
        ) : null
      }
    >
      <DrawList list={empty} scaleRatio={scaleRatio} />
      {standing && <DrawList list={figure} scaleRatio={scaleRatio} />}
      <DrawList list={set} scaleRatio={scaleRatio} />
      <BlueLines lines={lines} bounds={bounds.picture} scaleRatio={scaleRatio} />
      {played && (
        <ConstructionDrawing
          steps={played.construction.steps}
          shown={played.shown}
          openEnded={played.openEnded}
          bounds={bounds.picture}
          scaleRatio={scaleRatio}
        />
      )}
      {graded && <Correction graded={graded} drawn={drawn} />}
    </Pane>
  );
}
