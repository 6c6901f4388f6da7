"use client";

import { type KeyboardEvent, type ReactNode, useCallback, useState } from "react";
import { useStore } from "zustand";
import { markedPlane, useVoteDrawing } from "@/app/_live/use-vote-drawing";
import { VotePane } from "@/app/_live/vote-pane";
import { Press } from "@/app/_parts/press";
import { COMPASS } from "@/app/_sheet/constrain";
import { Magnifier } from "@/app/_sheet/magnifier";
import { viewOfPane, ZOOM_STEP } from "@/app/_sheet/pane-state";
import { useSheet } from "@/app/_sheet/sheet-context";
import { useMark } from "@/app/_sheet/use-mark";
import { type Plane, toPx } from "@/app/_sheet/view";
import type { LiveState } from "@/lib/classroom/live/live-state";
import type { DemonstrationStep } from "@/lib/drawing/demonstration/demonstration-step";
import type { Exercise } from "@/lib/exercise/exercise";
import { capital } from "@/lib/plan/first-letter";
import { LiveMark } from "./live-mark";
import { PhoneWords } from "./phone-words";
import type { PlacingStore } from "./placing";

/** Letters on the drawings, pixels: a phone is held near. */
const LETTER_PX = 12;

const KEYS_WORDS =
  "Arrows move your mark, Shift for large steps, Alt for fine ones; plus and minus zoom, 0 shows the whole drawing.";
const ZOOM_KEYS: Readonly<Record<string, number>> = { "+": ZOOM_STEP, "=": ZOOM_STEP, "-": 1 / ZOOM_STEP };

type Props = {
  readonly exercise: Exercise;
  readonly step: DemonstrationStep;
  readonly placing: PlacingStore;
  readonly state: LiveState;
  readonly joined: boolean;
  readonly lost: boolean;
  readonly children: ReactNode;
};

/** The picture to place the mark in, the plan to read the place from, and what happens with the mark. */
export function PhoneBoard({ exercise, step, placing, state, joined, lost, children }: Props) {
  const { views } = useSheet();
  const { fitted, drawn } = useVoteDrawing(exercise, step, LETTER_PX);
  const [magnified, setMagnified] = useState(false);
  const marked = markedPlane(exercise);
  const other: Plane = marked === "picture" ? "plan" : "picture";
  const open = state.state === "open" && joined;
  const bounds = useStore(views, (sheet) => sheet[marked].bounds);
  const at = useCallback(() => placing.getState().at, [placing]);
  const { begin, move, rest, undo } = placing.getState();
  const mark = useMark(
    {
      plane: marked,
      bounds,
      mark: at,
      start: [(bounds.left + bounds.right) / 2, (bounds.bottom + bounds.top) / 2],
      begin,
      move,
      rest,
      commit: rest,
      undo,
    },
    "plain",
  );
  const zoom = (plane: Plane, times: number) => {
    const here = plane === marked ? at() : drawn[plane].lit;
    const sheet = views.getState();
    const px =
      here && (plane === "picture" ? toPx(viewOfPane(sheet.picture), here) : toPx(viewOfPane(sheet.plan), here));
    sheet.zoom(plane, times, px ?? undefined);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const times = ZOOM_KEYS[event.key];
    if (times) zoom(marked, times);
    else if (event.key === "0") views.getState().whole(marked);
    else if (open) mark.onKeyDown(event);
  };
  const finger = mark.pointing?.down === true && mark.pointing.device !== "mouse";
  const zoomPresses = (plane: Plane) => (
    <>
      <Press weight="small" onClick={() => zoom(plane, ZOOM_STEP)} aria-label={`Closer, ${plane}`}>
        Closer
      </Press>
      <Press weight="small" onClick={() => views.getState().whole(plane)} aria-label={`Whole ${plane}`}>
        Whole
      </Press>
    </>
  );
  return (
    <main className="live-board" data-state={state.state} data-round={state.round} data-joined={joined}>
      <header className="live-head">
        <h1>{step.title}</h1>
        <p>{state.round > 1 ? `Round ${state.round}` : exercise.title}</p>
        <p className="live-where">{step.sentence}</p>
      </header>
      <section className="live-place" data-marked="" aria-label={capital(marked)}>
        <div className="live-tools">
          <span className="lettering">{capital(marked)}</span>
          <Press weight="small" aria-pressed={magnified} onClick={() => setMagnified(!magnified)}>
            Magnifier
          </Press>
          {zoomPresses(marked)}
        </div>
        <div
          className="live-keys"
          role="application"
          // biome-ignore lint/a11y/noNoninteractiveTabindex: a drawing surface worked by keys is an application region
          tabIndex={0}
          aria-label={`${capital(marked)}. ${KEYS_WORDS}`}
          onKeyDown={onKeyDown}
        >
          <VotePane
            plane={marked}
            drawn={drawn[marked]}
            scaleRatio={fitted[marked].scaleRatio}
            aria-hidden="true"
            onSecondFinger={mark.letGo}
            {...(open ? mark.svg : {})}
            live={
              <LiveMark exercise={exercise} point={step} placing={placing} state={state} held={mark.pointing?.held} />
            }
            over={
              open && (magnified || finger) ? (
                <Magnifier plane={marked} drawingId={`${marked}-drawing`} mark={at} watch={placing.subscribe} />
              ) : null
            }
          />
        </div>
      </section>
      <section className="live-place" aria-label={capital(other)}>
        <div className="live-tools">
          <span className="lettering">{capital(other)}</span>
          {zoomPresses(other)}
        </div>
        <div className="live-keys">
          <VotePane
            plane={other}
            drawn={drawn[other]}
            scaleRatio={fitted[other].scaleRatio}
            role="img"
            aria-label={`${capital(other)}, with the point asked lit.`}
          />
        </div>
      </section>
      <footer className="live-foot">
        {children}
        <PhoneWords exercise={exercise} point={step} placing={placing} state={state} joined={joined} lost={lost} />
        {open && (
          <fieldset className="live-nudges">
            <legend className="aloud">Move your mark by a millimetre of paper</legend>
            {COMPASS.map((toward) => (
              <Press key={toward} weight="small" onClick={() => mark.nudge(toward, "plain")}>
                {capital(toward)}
              </Press>
            ))}
          </fieldset>
        )}
      </footer>
    </main>
  );
}
