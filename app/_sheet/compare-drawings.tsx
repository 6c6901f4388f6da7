"use client";

import { type CSSProperties, type PointerEvent, useId, useState } from "react";
import type { Compared } from "./compare-lists";
import { StillDrawing } from "./still-drawing";
import "./compare.css";

/** Pixels of a millimetre of paper that the lines' weights are for. */
const PX_PER_MM = 3.4;
/** Narrower than this there is one drawing, with the other already over half of it. As in the style sheet. */
const NARROW = "(max-width: 700px)";
const HALF = 50;

type Props = {
  readonly compared: Compared;
  readonly plane: "picture" | "plan";
  /** Whether the reader drew it. */
  readonly whose?: "own" | "student";
};

const CALLED = { own: ["Yours", "you"], student: ["The student’s", "the student"] } as const;

/**
 * The student's drawing beside the finished one, both at one scale and on one height; a slider lays the student's over the
 * finished one, from the left, so that at the line between them it shows where lines part.
 */
export function CompareDrawings({ compared, plane, whose = "own" }: Props) {
  const { own, finished, bounds, scaleRatio } = compared;
  const [laid, setLaid] = useState(() => (window.matchMedia(NARROW).matches ? HALF : 0));
  const slider = useId();
  const sheet = { bounds, scaleRatio, pxPerMm: PX_PER_MM };
  const words = plane === "plan" ? "plan" : "picture";
  const [called, reader] = CALLED[whose];

  const dragTo = (event: PointerEvent<HTMLElement>) => {
    const { left, width } = event.currentTarget.getBoundingClientRect();
    if (width > 0) setLaid(Math.round(Math.min(Math.max((event.clientX - left) / width, 0), 1) * 100));
  };
  return (
    <div className="compare" style={{ "--laid": `${laid}%` } as CSSProperties}>
      <figure className="compare-own">
        <figcaption className="small-lettering">{called}</figcaption>
        <StillDrawing
          list={own}
          {...sheet}
          label={
            plane === "plan"
              ? `The plan as ${reader} read it.`
              : whose === "own"
                ? "Your drawing."
                : "The student’s drawing."
          }
        />
      </figure>
      <figure>
        <figcaption className="small-lettering">
          {laid === 0
            ? `The finished ${words}`
            : laid === 100
              ? called
              : `${called} left of the line, finished right of it`}
        </figcaption>
        <div
          className="compare-stack"
          onPointerDown={(event) => {
            event.currentTarget.setPointerCapture?.(event.pointerId);
            dragTo(event);
          }}
          onPointerMove={(event) => event.buttons === 1 && dragTo(event)}
        >
          <div className="compare-finished">
            <StillDrawing list={finished} {...sheet} label={`The finished ${words}.`} />
          </div>
          <div className="compare-over" aria-hidden="true">
            <StillDrawing list={own} {...sheet} label="" />
          </div>
          <div
            className="compare-line"
            aria-hidden="true"
            data-end={laid === 0 ? "none" : laid === 100 ? "all" : "part"}
          />
        </div>
        <input
          id={slider}
          className="compare-slider"
          type="range"
          min={0}
          max={100}
          value={laid}
          onChange={(event) => setLaid(Number(event.target.value))}
          aria-valuetext={sayLaid(laid, called.toLowerCase())}
        />
        <label htmlFor={slider} className="compare-label">
          Lay {called.toLowerCase()} over the finished {words}
        </label>
      </figure>
    </div>
  );
}

function sayLaid(laid: number, called: string): string {
  if (laid === 0) return "only the finished one is seen";
  if (laid === 100) return `only ${called} is seen`;
  return `${called} on the left ${laid} percent, the finished one on the rest`;
}
