"use client";

import { type ReactNode, useMemo, useState } from "react";
import { useLive } from "@/app/_live/use-live";
import { markedPlane, useVoteDrawing } from "@/app/_live/use-vote-drawing";
import { VotePane } from "@/app/_live/vote-pane";
import { LookDisclosure } from "@/app/_parts/look/look-switch";
import { SheetContext } from "@/app/_sheet/sheet-context";
import { createSheetViews } from "@/app/_sheet/sheet-views";
import type { Plane } from "@/app/_sheet/view";
import type { LiveState } from "@/lib/classroom/live/live-state";
import { placeStep } from "@/lib/classroom/live/place-step";
import type { DemonstrationStep } from "@/lib/drawing/demonstration/demonstration-step";
import type { Exercise } from "@/lib/exercise/exercise";
import { CloudDrawing } from "./cloud-drawing";
import { cloudRoom } from "./cloud-room";
import { CloudZoom } from "./cloud-zoom";
import { FrontPresses } from "./front-presses";
import { ResultWords } from "./result-words";
import { useResult } from "./use-result";
import "./front.css";

/** Any bounds will do until the screen is known. */
const UNKNOWN = { left: -1, right: 1, bottom: 0, top: 1 } as const;
/** Letters on the drawings, pixels: read from the back of a room. */
const LETTER_PX = 24;

type Props = {
  readonly classId: string;
  readonly voteId: string;
  readonly exercise: Exercise;
  readonly point: string;
  readonly first: LiveState;
  readonly code: string;
  readonly address: string;
  readonly guessed: boolean;
  /** The code to scan. */
  readonly children: ReactNode;
};

/** The screen at the front: the code to come in by and how many have placed their mark, then the marks, then the true point. */
export function FrontScreen({ exercise, point, ...rest }: Props) {
  const [views] = useState(() => createSheetViews(UNKNOWN, UNKNOWN));
  const sheet = useMemo(() => ({ views, scaleRatio: exercise.scaleRatio }), [views, exercise]);
  const step = useMemo(() => placeStep(exercise, point), [exercise, point]);
  return (
    step && (
      <SheetContext value={sheet}>
        <Screen {...rest} exercise={exercise} step={step} />
      </SheetContext>
    )
  );
}

type ScreenProps = Omit<Props, "point"> & { readonly step: DemonstrationStep };

function Screen({ classId, voteId, exercise, step, first, code, address, guessed, children }: ScreenProps) {
  const { state, lost } = useLive(voteId, first);
  const result = useResult(voteId, state);
  const { fitted, drawn } = useVoteDrawing(exercise, step, LETTER_PX);
  const marked = markedPlane(exercise);
  const other: Plane = marked === "picture" ? "plan" : "picture";
  const open = state.state === "open";
  return (
    <main className="front" data-state={state.state} data-round={state.round}>
      <div className="front-drawing">
        <VotePane
          plane={marked}
          drawn={drawn[marked]}
          scaleRatio={fitted[marked].scaleRatio}
          role="img"
          aria-label={`${marked === "picture" ? "Picture" : "Plan"}, ${result ? "with everyone's marks" : "to be marked"}. ${step.title}.`}
          live={result && <CloudDrawing result={result} />}
        />
      </div>
      <section className="front-side" aria-label="Everyone places it">
        <h1>
          {step.title}
          {state.round > 1 && <span className="vote-quiet"> Round {state.round}</span>}
        </h1>
        <p className="vote-quiet">{step.sentence}</p>
        {open ? (
          <>
            <div className="front-join">
              {children}
              <div>
                <p>{address}</p>
                <p className="front-code lettering" data-code="">
                  {code}
                </p>
              </div>
            </div>
            {guessed && (
              <p className="vote-quiet">
                Phones reach this computer only when Plasterline was started for the room: npm start -- --lan
              </p>
            )}
            <p className="front-count" role="status">
              <strong data-placed={state.placed}>{state.placed}</strong> {state.placed === 1 ? "mark is" : "marks are"}{" "}
              in
            </p>
          </>
        ) : result ? (
          <ResultWords result={result} scaleRatio={exercise.scaleRatio} />
        ) : (
          <p role="status">A moment…</p>
        )}
        {lost && <p className="vote-quiet">The line to the server is down. This screen comes back by itself.</p>}
        <FrontPresses
          classId={classId}
          voteId={voteId}
          exercise={exercise}
          point={step.point ?? ""}
          state={state}
          advice={result?.rounds.at(-1)?.advice ?? null}
        />
        {result && (
          <CloudZoom
            plane={marked}
            room={cloudRoom(result, exercise.scaleRatio)}
            shown={`${result.rounds.length}${result.truth ? " told" : ""}`}
          />
        )}
        <div className="front-other">
          <VotePane
            plane={other}
            drawn={drawn[other]}
            scaleRatio={fitted[other].scaleRatio}
            role="img"
            aria-label={`${other === "plan" ? "Plan" : "Picture"}, with the point asked lit.`}
          />
        </div>
        <LookDisclosure />
      </section>
    </main>
  );
}
