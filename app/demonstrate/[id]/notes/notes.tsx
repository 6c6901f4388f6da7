"use client";

import { useEffect, useMemo } from "react";
import { LookSwitch } from "@/app/_parts/look/look-switch";
import { Press } from "@/app/_parts/press";
import type { DemonstrationStep, TeacherNote } from "@/lib/drawing/demonstration/demonstration-step";
import { demonstrationSteps } from "@/lib/drawing/demonstration/demonstration-steps";
import type { Exercise } from "@/lib/exercise/exercise";
import { pagesOfDemonstration, talkName, type Whose } from "../addresses";
import { cornerEntries } from "../corner-entries";
import type { Message, PressName } from "../talk";
import { Clock } from "./clock";
import { NextDrawing } from "./next-drawing";
import { type Other, useDemonstrationWindow } from "./use-demonstration-window";
import "./notes.css";

/** Keys of a presenter's remote, when this window has them. */
const KEYS: Readonly<Record<string, PressName>> = {
  " ": "on",
  PageDown: "on",
  ArrowRight: "on",
  ArrowDown: "on",
  PageUp: "back",
  ArrowLeft: "back",
  ArrowUp: "back",
  b: "blank",
  ".": "blank",
  t: "try",
};

/** The teacher's window: what is said now, what to look for, what comes next, and the presses of the projected window. */
export function Notes({ exercise, own }: { readonly exercise: Exercise; readonly own?: string | null }) {
  const steps = useMemo(() => demonstrationSteps(exercise), [exercise]);
  const { showing, other, send } = useDemonstrationWindow(talkName({ id: exercise.id, own }));
  const step = steps[Math.min(showing?.at ?? 0, steps.length - 1)] as DemonstrationStep;
  const next = steps[step.number] ?? null;
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      const target = event.target instanceof HTMLElement ? event.target : null;
      const taken =
        target?.matches("select, input") || ([" ", "Enter"].includes(event.key) && target?.closest("button, a"));
      const pressed = KEYS[event.key.length === 1 ? event.key.toLowerCase() : event.key];
      if (!pressed || taken || event.ctrlKey || event.metaKey || event.altKey) return;
      event.preventDefault();
      send({ kind: "press", press: pressed });
    };
    window.addEventListener("keydown", press);
    return () => window.removeEventListener("keydown", press);
  }, [send]);

  return (
    <main className="notes-window">
      <header className="notes-head">
        <h1 className="lettering">Notes: {exercise.title}</h1>
        <Clock startedAt={showing?.startedAt ?? null} />
        <LookSwitch />
      </header>
      <OtherWindow other={other} whose={{ id: exercise.id, own }} />
      <div className="notes-columns">
        <Now step={step} of={steps.length} />
        <NoteWords note={step.note} />
        <section className="notes-next" aria-label="Next step">
          <h2 className="small-lettering">Next</h2>
          {next ? (
            <>
              <p className="notes-next-title">
                {next.number}. {next.title}
              </p>
              <p>{next.sentence}</p>
              <NextDrawing exercise={exercise} steps={steps} step={next} />
            </>
          ) : (
            <p>This is the last step.</p>
          )}
        </section>
      </div>
      <Presses
        other={other}
        blank={showing?.blank ?? false}
        trying={showing?.trying ?? "no"}
        send={send}
        steps={steps}
        at={step.number}
      />
    </main>
  );
}

function Now({ step, of }: { readonly step: DemonstrationStep; readonly of: number }) {
  return (
    <section className="notes-now" aria-label="On the screen now" aria-live="polite">
      <p className="small-lettering">
        {step.number} of {of}: {step.part}
      </p>
      <h2 className="lettering">{step.title}</h2>
      <p className="notes-sentence">{step.sentence}</p>
    </section>
  );
}

function NoteWords({ note }: { readonly note: TeacherNote }) {
  return (
    <section className="notes-note" aria-label="For you alone">
      <h2 className="small-lettering">Ask</h2>
      <p>{note.ask}</p>
      {note.worth !== "" && (
        <>
          <h2 className="small-lettering">On paper</h2>
          <p>{note.worth}</p>
        </>
      )}
      {note.watch.length > 0 && (
        <>
          <h2 className="small-lettering">Look for</h2>
          <ul>
            {note.watch.map(({ name, where, say }) => (
              <li key={name}>
                <b>{name}</b>: {where}. <span className="notes-say">{say}</span>
              </li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
}

function OtherWindow({ other, whose }: { readonly other: Other; readonly whose: Whose }) {
  const { demonstration } = pagesOfDemonstration(whose);
  const words: Readonly<Record<Other, string>> = {
    looking: "Looking for the demonstration in this browser.",
    open: "The demonstration is open.",
    closed: "The demonstration is not open in this browser. Open it, and bring its window to the projector.",
  };
  return (
    <p className="notes-other" role="status" data-other={other}>
      {words[other]}{" "}
      {other === "closed" && demonstration !== null && (
        <a className="plain-link" href={demonstration} target={`plasterline-demonstrate-${talkName(whose)}`}>
          Open the demonstration
        </a>
      )}
    </p>
  );
}

type PressesProps = {
  readonly other: Other;
  readonly blank: boolean;
  readonly trying: "no" | "waiting" | "shown";
  readonly steps: readonly DemonstrationStep[];
  readonly at: number;
  readonly send: (message: Message) => void;
};

function Presses({ other, blank, trying, steps, at, send }: PressesProps) {
  const press = (name: PressName) => () => send({ kind: "press", press: name });
  const off = other !== "open";
  const entries = cornerEntries(steps);
  const here = entries.findLast(({ number }) => number <= at)?.number ?? 1;
  return (
    <nav className="notes-presses" aria-label="Presses">
      <Press onClick={press("back")} disabled={off}>
        Back
      </Press>
      <Press weight="main" className="grow" onClick={press("on")} disabled={off}>
        On
      </Press>
      <Press onClick={press(trying === "waiting" ? "show" : "try")} disabled={off}>
        {trying === "waiting" ? "Show the true point" : "You try"}
      </Press>
      <Press aria-pressed={blank} onClick={press("blank")} disabled={off}>
        {blank ? "Light the screen" : "Blank"}
      </Press>
      <select
        aria-label="Go to a corner"
        className="look-list"
        value={here}
        disabled={off}
        onChange={(event) => send({ kind: "go", at: Number(event.target.value) - 1 })}
      >
        {entries.map(({ number, title }) => (
          <option key={number} value={number}>
            {number}. {title}
          </option>
        ))}
      </select>
    </nav>
  );
}
