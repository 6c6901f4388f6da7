"use client";

import { capital } from "@/lib/plan/first-letter";
import { numberOf } from "./corner-lines";
import type { Grip } from "./corner-marks";

type Props<G extends Grip> = {
  readonly shown: readonly G[];
  readonly selected: G;
  readonly select: (grip: G) => void;
};

/** The handles by name, the one on hand marked. */
export function CornerRows<G extends Grip>({ shown, selected, select }: Props<G>) {
  return (
    <ol className="corner-rows">
      {shown.map((grip) => (
        <li key={grip} className="point-row" data-chosen={grip === selected}>
          <button type="button" className="point-name" aria-pressed={grip === selected} onClick={() => select(grip)}>
            <span className="point-number">{numberOf(grip)}</span>
            <span>{capital(grip)}</span>
          </button>
        </li>
      ))}
    </ol>
  );
}
