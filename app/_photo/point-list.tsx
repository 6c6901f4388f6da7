"use client";

import { useEffect, useRef } from "react";
import { Press } from "@/app/_parts/press";
import type { Compass, NudgeStep } from "@/app/_sheet/constrain";
import type { ProjectedPoint } from "@/lib/exercise/exercise-points";
import { capital } from "@/lib/plan/first-letter";
import { sayPoint } from "@/lib/plan/say-point";
import type { CheckedDrawing, CheckedPoint, PointState, Said } from "./checked-drawing";
import { Nudges } from "./nudges";

type Desk = {
  /** Null where no move can be taken back. */
  readonly undo: (() => void) | null;
  readonly say: (what: Said) => void;
  readonly nudge: (toward: Compass, step: NudgeStep) => void;
};

type Props = Desk & {
  readonly drawing: Pick<CheckedDrawing, "points">;
  readonly points: ReadonlyMap<string, ProjectedPoint>;
  readonly selected: string | null;
  readonly select: (point: string | null) => void;
};

const STATE_WORDS: Readonly<Record<PointState, string>> = {
  read: "read",
  doubtful: "doubtful: look",
  missing: "not found: look",
  right: "right",
  moved: "moved by you",
  "not drawn": "not drawn",
};

/** The points asked, with what was read of each; under the one on hand, what can be said of it. */
export function PointList({ drawing, points, selected, select, ...desk }: Props) {
  const onHand = useRef<HTMLLIElement>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: brought into view when another point is chosen
  useEffect(() => {
    onHand.current?.scrollIntoView?.({ block: "nearest" });
  }, [selected]);
  return (
    <ol className="point-rows">
      {drawing.points.map((one, i) => {
        const known = points.get(one.point);
        const chosen = one.point === selected;
        return (
          <li
            key={one.point}
            ref={chosen ? onHand : null}
            className="point-row"
            data-state={one.state}
            data-chosen={chosen}
          >
            <button
              type="button"
              className="point-name"
              aria-expanded={chosen}
              onClick={() => select(chosen ? null : one.point)}
            >
              <span className="point-number">{i + 1}</span>
              <span>{known ? capital(sayPoint(known)) : one.point}</span>
              <span className="point-state">{STATE_WORDS[one.state]}</span>
            </button>
            {chosen && <Sayings one={one} {...desk} />}
          </li>
        );
      })}
    </ol>
  );
}

function Sayings({ one, undo, say, nudge }: Desk & { readonly one: CheckedPoint }) {
  return (
    <div className="point-sayings">
      <p>{adviceFor(one)}</p>
      <div className="check-presses">
        {one.state === "doubtful" && (
          <Press weight="small" onClick={() => say("right")}>
            It is right
          </Press>
        )}
        {one.state !== "not drawn" && (
          <Press weight="small" onClick={() => say("not drawn")}>
            Not drawn
          </Press>
        )}
        {(one.state === "moved" || one.state === "not drawn") && (
          <Press weight="small" onClick={() => say("as read")}>
            As it was read
          </Press>
        )}
        {undo && (
          <Press weight="small" onClick={undo}>
            Take back
          </Press>
        )}
      </div>
      <Nudges onNudge={nudge} />
    </div>
  );
}

function adviceFor({ state }: CheckedPoint): string {
  switch (state) {
    case "doubtful":
      return "Something is there, but it may be another thing. Say that it is right, or drag the handle to the corner drawn.";
    case "missing":
      return "Press on the photograph where it is drawn, or say that it is not drawn.";
    case "not drawn":
      return "It counts as missing. If it is there after all, press on the photograph where it is drawn.";
    default:
      return "Drag the handle if it does not stand on the corner drawn.";
  }
}
