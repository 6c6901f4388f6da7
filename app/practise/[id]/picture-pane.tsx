"use client";

import { type KeyboardEvent, type ReactNode, useCallback, useMemo } from "react";
import { BlueLines, LayingEdge } from "@/app/_sheet/blue-lines";
import { ConstructionDrawing } from "@/app/_sheet/construction-drawing";
import { DrawList } from "@/app/_sheet/draw-list";
import { drawFigureForScale, drawSetSoFar } from "@/app/_sheet/drawings";
import type { DrawnPoints } from "@/app/_sheet/drawn-points";
import { Magnifier } from "@/app/_sheet/magnifier";
import { Pane } from "@/app/_sheet/pane";
import { planeOf } from "@/app/_sheet/plane-of";
import type { useMark } from "@/app/_sheet/use-mark";
import type { useStraightedge } from "@/app/_sheet/use-straightedge";
import { drawSheetPicture } from "@/lib/drawing/draw-sheet-picture";
import type { ProjectedPoint } from "@/lib/exercise/exercise-points";
import type { GradedMark } from "@/lib/grading/grade";
import { AskedInPicture } from "./asked-in-picture";
import { Correction } from "./correction";
import { LegibleScale } from "./legible-scale";
import { PaneKeys } from "./pane-keys";
import { PendingMark } from "./pending-mark";
import { usePractice, usePracticeRoom } from "./practice-context";
import { drawTruePicture } from "./true-picture";
import type { Played } from "./use-player";

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
const KEYS_WORDS =
  "Picture. Arrows move the mark, Shift for large steps, Alt for fine ones, Enter sets it down, Backspace takes a move back, plus and minus zoom.";
const LOOK_WORDS = "Picture, with the point asked lit. Plus and minus zoom.";

/** The picture: where the marks are placed, or, where it is read back on to the plan, whole and with the point asked lit. */
export function PicturePane({ keys, tools, ...drawing }: Props) {
  const { store, exercise } = usePracticeRoom();
  const { asked } = drawing;
  const reading = planeOf(exercise) === "plan";
  return (
    <div className="picture-place">
      <PaneKeys
        plane="picture"
        label={reading ? LOOK_WORDS : KEYS_WORDS}
        keys={keys}
        about={() => (reading ? asked.picture : store.getState().attempt.pending)}
      >
        <LegibleScale plane="picture">
          {reading ? <PictureToRead {...drawing} /> : <PictureDrawing {...drawing} />}
        </LegibleScale>
      </PaneKeys>
      {tools}
    </div>
  );
}

type DrawingProps = Omit<Props, "keys" | "tools">;

function PictureDrawing({ mark, held, edge, asked, drawn, graded, magnified, played }: DrawingProps) {
  const room = usePracticeRoom();
  const { exercise, bounds, store } = room;
  const { scaleRatio } = exercise;
  const empty = useMemo(() => drawSheetPicture(exercise), [exercise]);
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
      <Figure />
      <DrawList list={set} scaleRatio={scaleRatio} />
      <OwnLines />
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

/** The picture that is read back: the set whole and true, and after a mark the place that was read, drawn into it. */
function PictureToRead({ edge, asked, graded }: DrawingProps) {
  const room = usePracticeRoom();
  const { exercise, bounds } = room;
  const { scaleRatio } = exercise;
  const empty = useMemo(() => drawSheetPicture(exercise), [exercise]);
  // The names keep clear of the figure also while it is away, so that they stay where they are.
  const set = useMemo(
    () => drawTruePicture(room, [...empty, ...drawFigureForScale(exercise)]),
    [room, exercise, empty],
  );
  return (
    <Pane
      plane="picture"
      drawingId={DRAWING_ID}
      onSecondFinger={edge?.letGo}
      aria-hidden="true"
      {...(edge?.svg ?? {})}
      live={edge && <LayingEdge laying={edge.laying} bounds={bounds.picture} scaleRatio={scaleRatio} />}
    >
      <DrawList list={empty} scaleRatio={scaleRatio} />
      <Figure />
      <DrawList list={set} scaleRatio={scaleRatio} />
      <OwnLines />
      <AskedInPicture point={asked} graded={graded} />
    </Pane>
  );
}

/** The figure for scale, while it stands. */
function Figure() {
  const { exercise } = usePracticeRoom();
  const standing = usePractice((practice) => practice.attempt.figure);
  const figure = useMemo(() => drawFigureForScale(exercise), [exercise]);
  return standing && <DrawList list={figure} scaleRatio={exercise.scaleRatio} />;
}

/** The student's construction lines in the picture. */
function OwnLines() {
  const { exercise, bounds } = usePracticeRoom();
  const all = usePractice((practice) => practice.attempt.lines);
  const lines = useMemo(() => all.filter((line) => line.plane === "picture"), [all]);
  return <BlueLines lines={lines} bounds={bounds.picture} scaleRatio={exercise.scaleRatio} />;
}
