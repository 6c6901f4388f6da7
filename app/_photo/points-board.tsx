"use client";

import { type ReactNode, useCallback, useMemo } from "react";
import { type StoreApi, useStore } from "zustand";
import type { Place } from "@/app/_parts/kept-work/attempt";
import { planeOf } from "@/app/_sheet/plane-of";
import type { Bounds } from "@/app/_sheet/view";
import type { Exercise } from "@/lib/exercise/exercise";
import { exercisePoints } from "@/lib/exercise/exercise-points";
import { printScale } from "@/lib/measure/scale";
import type { CheckedDrawing } from "./checked-drawing";
import { Handle, type HandleLook } from "./handle";
import { HandledPhoto } from "./handled-photo";
import { PhotoSheet } from "./photo-pane";
import { boundsOfBox } from "./places";
import type { PointDesk } from "./point-desk";
import { PointList } from "./point-list";
import { useHandles } from "./use-handles";

type Props = {
  readonly exercise: Exercise;
  readonly drawing: CheckedDrawing;
  readonly desk: StoreApi<PointDesk>;
  /** What stands under the photograph. */
  readonly caption: string;
  /** Over the points, and under them. */
  readonly head: ReactNode;
  readonly foot: ReactNode;
};

const WORDS =
  "The photograph with a handle at each point read. Choose a point in the list; arrows move it, Shift for large steps, Alt for fine ones, Enter says that it is right, Backspace takes a move back, plus and minus zoom.";

/** A drawing seen straight on, with a handle at every reading and the list of the points beside it. */
export function PointsBoard(props: Props) {
  const { frame, box, picture } = props.drawing;
  const bounds = useMemo(() => boundsOfBox(frame, box), [frame, box]);
  return (
    <PhotoSheet key={picture} bounds={bounds} scaleRatio={frame.ratio}>
      <Board {...props} bounds={bounds} />
    </PhotoSheet>
  );
}

function Board({ exercise, drawing, desk, caption, head, foot, bounds }: Props & { readonly bounds: Bounds }) {
  const selected = useStore(desk, (state) => state.selected);
  const earlier = useStore(desk, (state) => state.earlier.length);
  const points = useMemo(() => exercisePoints(exercise), [exercise]);
  const plane = planeOf(exercise);

  const places = useCallback(
    () =>
      new Map(
        (desk.getState().drawing?.points ?? []).flatMap(({ point, at }): [string, Place][] =>
          at ? [[point, at]] : [],
        ),
      ),
    [desk],
  );
  const { begin, move, rest, undo, select, say } = desk.getState();
  const handles = useHandles({
    plane,
    bounds,
    places,
    selected: () => desk.getState().selected,
    select,
    begin,
    move,
    rest,
    undo,
    settle: () => say("right"),
  });
  const onHand = useCallback(() => {
    const point = desk.getState().selected;
    return point === null ? null : (places().get(point) ?? null);
  }, [desk, places]);
  return (
    <div className="check-sheet ruled">
      <HandledPhoto
        plane={plane}
        label={WORDS}
        address={drawing.picture}
        bounds={bounds}
        handles={handles}
        onHand={onHand}
        watch={desk.subscribe}
        caption={`${caption} ${printScale(drawing.scale)}`}
        live={drawing.points.map(({ point, at, state }, i) =>
          at ? (
            <g key={point} data-handle={point}>
              <Handle
                at={at}
                scaleRatio={drawing.frame.ratio}
                look={lookOf(state, point === selected)}
                letters={String(i + 1)}
              />
            </g>
          ) : null,
        )}
      />
      <section className="check-side" aria-label="The points read">
        <div className="check-side-head">{head}</div>
        <PointList
          drawing={drawing}
          points={points}
          selected={selected}
          select={select}
          undo={earlier > 0 ? undo : null}
          say={say}
          nudge={handles.nudge}
        />
        <div className="check-side-foot">{foot}</div>
      </section>
    </div>
  );
}

function lookOf(state: CheckedDrawing["points"][number]["state"], selected: boolean): HandleLook {
  if (selected) return "selected";
  if (state === "doubtful") return "doubtful";
  return state === "read" ? "sure" : "settled";
}
