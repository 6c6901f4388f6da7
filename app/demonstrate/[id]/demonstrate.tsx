"use client";

import { type CSSProperties, useMemo, useRef, useState } from "react";
import { SheetContext } from "@/app/_sheet/sheet-context";
import { createSheetViews } from "@/app/_sheet/sheet-views";
import { demonstrationSteps } from "@/lib/drawing/demonstration/demonstration-steps";
import { startDemonstrationDrawing } from "@/lib/drawing/demonstration/draw-demonstration";
import type { Exercise } from "@/lib/exercise/exercise";
import { Controls } from "./controls";
import { CornersCard } from "./corners-card";
import {
  DemonstrationContext,
  type DemonstrationRoom,
  useDemonstration,
  useRoom,
  useStep,
} from "./demonstration-context";
import { createDemonstration } from "./demonstration-store";
import { KeysCard } from "./keys-card";
import { PointerRing } from "./pointer-ring";
import { StepPane } from "./step-pane";
import { toggleFullScreen, toggleLight } from "./toggle-screen";
import { useControlsSeen } from "./use-controls-seen";
import { useDemonstrationLayout } from "./use-demonstration-layout";
import { type PageMoves, useKeys } from "./use-keys";
import { useNotesWindow } from "./use-notes-window";
import { useStepAddress } from "./use-step-address";
import { Words } from "./words";
import "./demonstrate.css";

/** Any bounds will do until the screen is known. */
const UNKNOWN = { left: -1, right: 1, bottom: 0, top: 1 } as const;

type Props = {
  readonly exercise: Exercise;
  /** Of an exercise that is in no course: what it is set aside under, or null where nothing can be. */
  readonly own?: string | null;
  readonly text?: string | null;
};

/** One exercise before a room, from its plan to its finished picture. */
export function Demonstrate({ exercise, own, text = null }: Props) {
  const room = useMemo<DemonstrationRoom>(() => {
    const steps = demonstrationSteps(exercise);
    return {
      exercise,
      own,
      text,
      steps,
      store: createDemonstration(steps),
      plane: exercise.task.kind === "picture-to-plan" ? "plan" : "picture",
    };
  }, [exercise, own, text]);
  const [views] = useState(() => createSheetViews(UNKNOWN, UNKNOWN));
  const sheet = useMemo(() => ({ views, scaleRatio: exercise.scaleRatio }), [views, exercise]);
  return (
    <DemonstrationContext value={room}>
      <SheetContext value={sheet}>
        <Screen />
      </SheetContext>
    </DemonstrationContext>
  );
}

function Screen() {
  const { exercise, store } = useRoom();
  const step = useStep();
  const frame = useRef<HTMLElement>(null);
  const { layout, narrow, change, fitted, sentencePx, shapes } = useDemonstrationLayout(frame);
  const { open, openNotes } = useNotesWindow();
  const { seen, pinned, pin } = useControlsSeen(frame);
  const [letters, setLetters] = useState(true);
  const blank = useDemonstration((demonstration) => demonstration.blank);
  const ring = useDemonstration((demonstration) => demonstration.ring);
  const card = useDemonstration((demonstration) => demonstration.card);
  const pencil = useDemonstration((demonstration) => demonstration.pencil);
  const trying = useDemonstration((demonstration) => demonstration.trying);
  useStepAddress();

  const latest = useRef({ layout, change });
  latest.current = { layout, change };
  const page = useMemo<PageMoves>(
    () => ({
      fullScreen: toggleFullScreen,
      light: toggleLight,
      notes: openNotes,
      controls: pin,
      layout: () => latest.current.change(latest.current.layout === "beside" ? "stacked" : "beside"),
    }),
    [openNotes, pin],
  );
  useKeys(page, letters);

  const draw = useMemo(() => startDemonstrationDrawing(exercise, fitted), [exercise, fitted]);
  const drawn = useMemo(() => draw(step), [draw, step]);
  return (
    <main
      ref={frame}
      className="demonstration"
      data-layout={narrow ? "narrow" : layout}
      data-step={step.number}
      data-pencil={pencil ?? undefined}
      data-trying={trying}
      style={
        {
          "--sentence": `${sentencePx}px`,
          "--picture-across": `${shapes.picture}fr`,
          "--plan-across": `${shapes.plan}fr`,
          "--picture-high": `${1 / shapes.picture}fr`,
          "--plan-high": `${1 / shapes.plan}fr`,
          "--stack-width": `calc(${1 / (1 / shapes.picture + 1 / shapes.plan)} * 100dvh)`,
        } as CSSProperties
      }
    >
      <h1 className="aloud">Demonstrate: {exercise.title}</h1>
      <StepPane
        plane="picture"
        drawn={drawn.picture}
        fitted={fitted.picture}
        kind={step.kind}
        label={`Picture. ${step.title}.`}
      />
      <StepPane
        plane="plan"
        drawn={drawn.plan}
        fitted={fitted.plan}
        kind={step.kind}
        label={`Ground plan. ${step.title}.`}
      />
      {step.shown.parts.length === 0 && (
        <div className="opening-card" aria-hidden="true">
          <p className="opening-title lettering">{exercise.title}</p>
          <p>{exercise.brief}</p>
        </div>
      )}
      <Words />
      <div className="controls-place" data-seen={seen || undefined}>
        <Controls page={page} layout={layout} narrow={narrow} notesOpen={open} />
      </div>
      <button type="button" className="controls-pin" aria-pressed={pinned} onClick={pin}>
        Presses
      </button>
      {card === "keys" && <KeysCard letters={letters} onLetters={setLetters} />}
      {card === "corners" && <CornersCard />}
      {ring && <PointerRing />}
      {blank && (
        <button type="button" className="blank-screen" onClick={() => store.getState().setBlank(false)}>
          <span className="aloud">The screen is blank. Press to light it again.</span>
        </button>
      )}
    </main>
  );
}
