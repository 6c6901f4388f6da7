"use client";

import { type KeyboardEvent, useEffect, useRef } from "react";
import { Press } from "@/app/_parts/press";
import type { Construction } from "@/lib/construction/step";

type Props = {
  readonly construction: Construction;
  readonly title: string;
  /** How many steps are drawn, from 1. */
  readonly shown: number;
  readonly onShown: (shown: number) => void;
  readonly onAway: () => void;
  /** What the press that leaves is called. */
  readonly away: string;
};

/** The construction beside the sheet, line by line with its sentences, forward and back. */
export function ConstructionNotes({ construction, title, shown, onShown, onAway, away }: Props) {
  const { steps, method } = construction;
  const list = useRef<HTMLOListElement>(null);
  const on = useRef<HTMLButtonElement>(null);
  useEffect(() => on.current?.focus({ preventScroll: true }), []);
  useEffect(() => {
    list.current?.children[shown - 1]?.scrollIntoView({ block: "nearest" });
  }, [shown]);
  const go = (to: number) => onShown(Math.min(steps.length, Math.max(1, to)));
  const onKeyDown = (event: KeyboardEvent) => {
    const to = { ArrowRight: shown + 1, ArrowLeft: shown - 1, Home: 1, End: steps.length }[event.key];
    if (to === undefined) return;
    event.preventDefault();
    go(to);
  };
  return (
    <section className="notes construction-notes" aria-label="Construction" onKeyDown={onKeyDown}>
      <p className="small-lettering notes-step">
        Line {shown} of {steps.length}: {method}
      </p>
      <h2 className="notes-title">{title}</h2>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reached by keys */}
      <section className="notes-words" aria-label="Its lines" tabIndex={0}>
        <ol className="construction-steps" ref={list}>
          {steps.slice(0, shown).map((step, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a construction's steps are numbered and never move
            <li key={i} aria-current={i === shown - 1 ? "step" : undefined}>
              {step.say}
            </li>
          ))}
        </ol>
        {shown === steps.length && (
          <p className="notes-worth">
            Found by its lines the point is exact. What is set down by eye is an estimate, and is graded as one.
          </p>
        )}
      </section>
      <p className="aloud" role="status">
        {shown}. {steps[shown - 1]?.say}
      </p>
      <div className="notes-presses">
        <Press onClick={() => go(shown - 1)} disabled={shown === 1}>
          Back
        </Press>
        {/* aria-disabled, not disabled: the last line must not throw the keys' focus away */}
        <Press ref={on} onClick={() => go(shown + 1)} aria-disabled={shown === steps.length}>
          On
        </Press>
        <Press weight="main" className="grow" onClick={onAway}>
          {away}
        </Press>
      </div>
    </section>
  );
}
