"use client";

import { type CSSProperties, useId, useMemo, useState } from "react";
import type { Place } from "@/app/_parts/kept-work/attempt";
import type { CheckedDrawing } from "@/app/_photo/checked-drawing";
import { PhotoPane, PhotoSheet } from "@/app/_photo/photo-pane";
import { boundsOfBox } from "@/app/_photo/places";
import { DrawList } from "@/app/_sheet/draw-list";
import { edgesIn } from "@/app/_sheet/drawings";
import { OwnMark, PlainLine, TrueMark } from "@/app/_sheet/end-marks";
import { planeOf } from "@/app/_sheet/plane-of";
import type { SetRoom } from "@/app/_sheet/set-room";
import { ZoomPresses } from "@/app/_sheet/zoom-presses";
import { TRUE_LINES } from "@/lib/drawing/draw-edges";
import type { Grade } from "@/lib/grading/grade";
import { printScale } from "@/lib/measure/scale";
import "@/app/_sheet/compare.css";

type Props = { readonly room: SetRoom; readonly grade: Grade; readonly drawing: CheckedDrawing };

const ALL = 100;
const nowhere = () => null;

/** The truth in red over the photograph, laid on from the left as far as the reader wants it: before, after, and between. */
export function TruthOver({ room, grade, drawing }: Props) {
  const { exercise, truth } = room;
  const { scaleRatio } = exercise;
  const [laid, setLaid] = useState(ALL);
  const slider = useId();
  const plane = planeOf(exercise);
  const bounds = useMemo(() => boundsOfBox(drawing.frame, drawing.box), [drawing]);
  const lines = useMemo(() => {
    const known = [...exercise.task.given, ...exercise.task.marks].flatMap((name): [string, Place][] => {
      const at = truth.get(name);
      return at ? [[name, at]] : [];
    });
    return edgesIn(room, new Map(known), TRUE_LINES);
  }, [room, exercise, truth]);
  return (
    <PhotoSheet bounds={bounds} scaleRatio={scaleRatio}>
      <div className="truth-over" style={{ "--laid": `${laid}%` } as CSSProperties}>
        <div
          className="truth-pane"
          style={{ aspectRatio: `${bounds.right - bounds.left} / ${bounds.top - bounds.bottom}` }}
        >
          <PhotoPane
            plane={plane}
            label="Your pencil drawing with the truth in red. Plus and minus zoom. The table tells each error."
            address={drawing.picture}
            bounds={bounds}
            about={nowhere}
            live={
              <>
                <DrawList list={lines} scaleRatio={scaleRatio} />
                {grade.marks.map((mark) => (
                  <g key={mark.point} data-truth={mark.point}>
                    <PlainLine from={mark.at} to={mark.true} scaleRatio={scaleRatio} className="off-line" />
                    <TrueMark at={mark.true} scaleRatio={scaleRatio} />
                    <OwnMark at={mark.at} scaleRatio={scaleRatio} />
                  </g>
                ))}
              </>
            }
            over={<div className="truth-line" aria-hidden="true" data-end={laid > 0 && laid < ALL ? "part" : "none"} />}
          />
        </div>
        <div className="truth-slide">
          <input
            id={slider}
            className="compare-slider"
            type="range"
            min={0}
            max={ALL}
            value={laid}
            onChange={(event) => setLaid(Number(event.target.value))}
            aria-valuetext={sayLaid(laid)}
          />
        </div>
        <div className="check-tools">
          <label htmlFor={slider} className="check-drawn">
            <span className="lettering">Your drawing {printScale(drawing.scale)}</span>{" "}
            <span className="check-quiet">red and dashed: the truth, as far as you lay it on</span>
          </label>
          <ZoomPresses plane={plane} />
        </div>
      </div>
    </PhotoSheet>
  );
}

function sayLaid(laid: number): string {
  if (laid === 0) return "only your drawing is seen";
  if (laid === ALL) return "the truth lies over all of it";
  return `the truth lies over the left ${laid} percent`;
}
