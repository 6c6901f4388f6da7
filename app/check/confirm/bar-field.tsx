"use client";

import { useId, useState } from "react";
import { barLengthMm } from "@/lib/drawing/practice-sheet/draw-bar";
import type { LengthUnits } from "@/lib/measure/length";
import { judgeBar } from "@/lib/photo/straighten/judge-bar";
import { readMm } from "../read-mm";

/** Asks, for whoever cares to measure, how long the sheet's bar came out, and says what that means. */
export function BarField({ units }: { readonly units: LengthUnits }) {
  const id = useId();
  const [typed, setTyped] = useState("");
  return (
    <details className="check-bar">
      <summary>How long is the bar on your sheet?</summary>
      <div className="check-bar-field">
        <label htmlFor={id}>Measured with a ruler (it should be {units === "ft-in" ? '4", 101.6 mm' : "100 mm"})</label>
        <span>
          <input
            id={id}
            type="text"
            autoComplete="off"
            value={typed}
            onChange={(event) => setTyped(event.target.value)}
            aria-describedby={`${id}-said`}
          />{" "}
          mm
        </span>
      </div>
      <p id={`${id}-said`} role="status">
        {typed.trim() !== "" && sayBar(typed, units)}
      </p>
    </details>
  );
}

/** What a bar of a measured length tells of its sheet. */
export function sayBar(typed: string, units: LengthUnits): string {
  const read = readMm(typed);
  if (!read.ok) return read.say;
  const judged = judgeBar(barLengthMm(units), Math.round(read.mm * 10) / 10);
  return judged.kind === "true size" ? "Your sheet is printed at its true size." : `${judged.say} ${judged.remedy}`;
}
