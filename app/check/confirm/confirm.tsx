"use client";

import { useCallback, useEffect, useMemo, useRef, useState } from "react";
import type { Place } from "@/app/_parts/kept-work/attempt";
import { Press } from "@/app/_parts/press";
import { Magnifier } from "@/app/_sheet/magnifier";
import { planeOf } from "@/app/_sheet/plane-of";
import type { Exercise } from "@/lib/exercise/exercise";
import { exercisePoints } from "@/lib/exercise/exercise-points";
import { printScale } from "@/lib/measure/scale";
import { useCheck, useCheckRoom } from "../check-context";
import { CheckFrame } from "../check-frame";
import { type CheckedDrawing, isOpen, mayConfirm, nextOpen } from "../checked-drawing";
import { Handle, type HandleLook } from "../handle";
import { PHOTO_ID, PhotoPane, PhotoSheet, ZoomPresses } from "../photo-pane";
import { boundsOfBox } from "../places";
import { useFinish } from "../use-finish";
import { useHandles } from "../use-handles";
import { PointList } from "./point-list";

type Props = { readonly exercise: Exercise; readonly drawing: CheckedDrawing };

const WORDS =
  "The photograph with a handle at each point read. Choose a point in the list; arrows move it, Shift for large steps, Alt for fine ones, Enter says that it is right, Backspace takes a move back, plus and minus zoom.";

/** Every reading is shown for the student to confirm, to drag or to add; nothing is marked before. */
export function Confirm({ exercise, drawing }: Props) {
  const bounds = useMemo(() => boundsOfBox(drawing.frame, drawing.box), [drawing.frame, drawing.box]);
  return (
    <PhotoSheet key={drawing.picture} bounds={bounds} scaleRatio={drawing.frame.ratio}>
      <ConfirmBoard exercise={exercise} drawing={drawing} bounds={bounds} />
    </PhotoSheet>
  );
}

function ConfirmBoard({ exercise, drawing, bounds }: Props & { readonly bounds: ReturnType<typeof boundsOfBox> }) {
  const { store } = useCheckRoom();
  const selected = useCheck((check) => check.selected);
  const keeping = useCheck((check) => check.keeping);
  const [magnified, setMagnified] = useState(false);
  const finish = useFinish(exercise);
  const head = useRef<HTMLHeadingElement>(null);
  useEffect(() => head.current?.focus({ preventScroll: true }), []);
  const points = useMemo(() => exercisePoints(exercise), [exercise]);
  const plane = planeOf(exercise);

  const places = useCallback(
    () =>
      new Map(
        (store.getState().drawing?.points ?? []).flatMap(({ point, at }): [string, Place][] =>
          at ? [[point, at]] : [],
        ),
      ),
    [store],
  );
  const { begin, move, rest, undo } = store.getState();
  const handles = useHandles({
    plane,
    bounds,
    places,
    selected: () => store.getState().selected,
    select: (point) => store.getState().select(point),
    begin,
    move,
    rest,
    undo,
    settle: () => store.getState().say("right"),
  });
  const onHand = useCallback(() => {
    const point = store.getState().selected;
    return point === null ? null : (places().get(point) ?? null);
  }, [store, places]);
  const finger = handles.pointing?.down === true && handles.pointing.device !== "mouse";
  const open = drawing.points.filter(isOpen).length;

  const confirm = () => {
    if (mayConfirm(drawing)) finish();
    else store.getState().select(nextOpen(drawing));
  };
  return (
    <CheckFrame title={exercise.title} board>
      <div className="check-sheet ruled">
        <div className="check-picture">
          <PhotoPane
            plane={plane}
            label={WORDS}
            address={drawing.picture}
            bounds={bounds}
            keys={handles.onKeyDown}
            about={onHand}
            onSecondFinger={handles.letGo}
            {...handles.svg}
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
            over={
              magnified || finger ? (
                <Magnifier plane={plane} drawingId={PHOTO_ID} mark={onHand} watch={store.subscribe} />
              ) : null
            }
          />
          <div className="check-tools">
            <p className="check-drawn">
              <span className="lettering">Your drawing {printScale(drawing.scale)}</span>
            </p>
            <Press weight="small" aria-pressed={magnified} onClick={() => setMagnified(!magnified)}>
              Magnifier
            </Press>
            <ZoomPresses plane={plane} about={onHand} />
          </div>
        </div>
        <section className="check-side" aria-label="The points read">
          <div className="check-side-head">
            <h1 ref={head} tabIndex={-1} className="check-side-title">
              Is this what you drew?
            </h1>
            <p className="check-quiet">{sayFit(drawing)}</p>
            {drawing.doubts.map((doubt) => (
              <p key={doubt} className="check-note">
                {doubt}
              </p>
            ))}
            {!keeping && (
              <p className="check-note">This browser keeps nothing: what you do here is gone on a reload.</p>
            )}
          </div>
          <PointList drawing={drawing} points={points} nudge={handles.nudge} />
          <div className="check-side-foot">
            <Press weight="main" onClick={confirm} aria-describedby="check-left">
              {open > 0 ? `Next to look at: ${open} left` : finish.words}
            </Press>
            <Press onClick={() => store.getState().startAnew()}>Another photo</Press>
            <p id="check-left" role="status" className="aloud">
              {open === 0
                ? "Every point is settled."
                : `${open} ${open === 1 ? "point is" : "points are"} still to be looked at.`}
            </p>
          </div>
        </section>
      </div>
    </CheckFrame>
  );
}

function lookOf(state: CheckedDrawing["points"][number]["state"], selected: boolean): HandleLook {
  if (selected) return "selected";
  if (state === "doubtful") return "doubtful";
  return state === "read" ? "sure" : "settled";
}

function sayFit({ residualMm, points }: CheckedDrawing): string {
  const read = points.filter(({ read: { at } }) => at !== null).length;
  const found =
    read === 0
      ? "No point was read"
      : read === points.length
        ? "Every point was read"
        : `${read} of ${points.length} points were read`;
  const fit = residualMm === null ? "" : ` The sheet lies flat to ${residualMm.toFixed(2)} mm.`;
  return `${found}. Look at each, and drag what is not right.${fit}`;
}
