"use client";

import { useId } from "react";
import { Press } from "@/app/_parts/press";
import { LEAST_STRENGTH } from "./trace";
import { useTrace, useTraceStore } from "./trace-context";

/** The photograph under the plan: laid, shown, made fainter, laid again, taken away, put back. */
export function TraceSection() {
  const { trace, before, kept } = useTrace((desk) => desk);
  const store = useTraceStore();
  const id = useId();
  const act = store.getState();
  return (
    <section aria-labelledby={`${id}-head`} className="trace-section">
      <h2 id={`${id}-head`} className="lettering">
        A photograph under the plan
      </h2>
      {trace ? (
        <div className="draft-field">
          <label htmlFor={id} className="small-lettering">
            How strongly it shows
          </label>
          <input
            id={id}
            type="range"
            className="trace-strength"
            min={LEAST_STRENGTH}
            max={100}
            step={5}
            value={trace.strength}
            aria-valuetext={`${trace.strength} percent`}
            disabled={!trace.shown}
            onChange={(event) => act.setStrength(Number(event.target.value))}
          />
        </div>
      ) : (
        <p>
          A plan that is there on paper can be traced: a photograph or a scan of it lies under what you draw, to scale.
        </p>
      )}
      <div className="draft-presses">
        {trace ? (
          <>
            <Press weight="small" aria-pressed={!trace.shown} onClick={() => act.show(!trace.shown)}>
              Hide it
            </Press>
            <Press weight="small" onClick={() => act.begin("again")}>
              Lay it again
            </Press>
            <Press weight="small" onClick={act.takeAway}>
              Take it away
            </Press>
            <Press weight="small" onClick={() => act.begin("new")}>
              Lay another
            </Press>
          </>
        ) : (
          <Press weight="small" onClick={() => act.begin("new")}>
            Lay a photograph under the plan
          </Press>
        )}
        {before && (before.trace || trace) && (
          <Press weight="small" onClick={act.putBack}>
            {before.trace ? (trace ? "Put it back as it was" : "Put it back") : "Back to none"}
          </Press>
        )}
      </div>
      <p className="draft-note" role="status">
        {trace && kept === false
          ? "This browser does not keep the photograph: it will be gone when you close or reload the page. Your plan is not touched by that."
          : ""}
      </p>
      {(trace || before) && (
        <p className="draft-note">
          Undo leaves the photograph alone: it is no part of the plan, nor of the exercise's file, and goes to no
          server. What you take away or lay anew can be put back until you leave the page.
        </p>
      )}
    </section>
  );
}
