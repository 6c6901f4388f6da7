"use client";

import { useEffect, useRef } from "react";
import { Press } from "@/app/_parts/press";
import { type CheckedDrawing, isOpen, mayConfirm, nextOpen } from "@/app/_photo/checked-drawing";
import { PointsBoard } from "@/app/_photo/points-board";
import { sayReadings } from "@/app/_photo/say-readings";
import type { Exercise } from "@/lib/exercise/exercise";
import { useCheck, useCheckRoom } from "../check-context";
import { CheckFrame } from "../check-frame";
import { useFinish } from "../use-finish";
import { BarField } from "./bar-field";

type Props = { readonly exercise: Exercise; readonly drawing: CheckedDrawing };

/** Every reading is shown for the student to confirm, to drag or to add; nothing is marked before. */
export function Confirm({ exercise, drawing }: Props) {
  const { store } = useCheckRoom();
  const keeping = useCheck((check) => check.keeping);
  const finish = useFinish(exercise);
  const head = useRef<HTMLHeadingElement>(null);
  useEffect(() => head.current?.focus({ preventScroll: true }), []);
  const open = drawing.points.filter(isOpen).length;

  const confirm = () => {
    if (mayConfirm(drawing)) finish();
    else store.getState().select(nextOpen(drawing));
  };
  return (
    <CheckFrame title={exercise.title} board>
      <PointsBoard
        exercise={exercise}
        drawing={drawing}
        desk={store}
        caption="Your drawing"
        head={
          <>
            <h1 ref={head} tabIndex={-1} className="check-side-title">
              Is this what you drew?
            </h1>
            <p className="check-quiet">{sayReadings(drawing)}</p>
            {drawing.doubts.map((doubt) => (
              <p key={doubt} className="check-note">
                {doubt}
              </p>
            ))}
            {/* Corners set by hand are those of a drawing on other paper, which has no bar. */}
            {drawing.residualMm !== null && <BarField units={exercise.units} />}
            {!keeping && (
              <p className="check-note">This browser keeps nothing: what you do here is gone on a reload.</p>
            )}
          </>
        }
        foot={
          <>
            <Press weight="main" onClick={confirm} aria-describedby="check-left">
              {open > 0 ? `Next to look at: ${open} left` : finish.words}
            </Press>
            <Press onClick={() => store.getState().startAnew()}>Another photo</Press>
            <p id="check-left" role="status" className="aloud">
              {open === 0
                ? "Every point is settled."
                : `${open} ${open === 1 ? "point is" : "points are"} still to be looked at.`}
            </p>
          </>
        }
      />
    </CheckFrame>
  );
}
