"use client";

import { useId, useState } from "react";
import { useStore } from "zustand";
import { Press } from "@/app/_parts/press";
import { placesAsked, pointedPair } from "@/lib/draft/bring/pointing/pointing";
import { PLACE_WORDS } from "@/lib/draft/bring/pointing/say-pointing";
import { typedLength } from "@/lib/draft/snapping/typed-point";
import type { LengthUnits } from "@/lib/measure/length";
import type { PointingStore } from "./pointing-store";

type Props = {
  readonly pointing: PointingStore;
  /** What a bare number counts in. */
  readonly units: LengthUnits;
};

/** The places that are pointed at, each to be set again, and the length between the two of the size. */
export function PointingSteps({ pointing, units }: Props) {
  const now = useStore(pointing);
  const { asked, places, tell } = now;
  return (
    <section aria-label="Where it lies on the stage" className="bring-steps">
      <ol>
        {placesAsked(now).map((place) => (
          <li key={place} aria-current={asked === place ? "step" : undefined}>
            <span>{PLACE_WORDS[place]}</span>
            {places[place] ? (
              <Press
                weight="small"
                aria-pressed={asked === place}
                aria-label={`${PLACE_WORDS[place]}: set again`}
                onClick={() => tell({ do: "ask", place })}
              >
                Set again
              </Press>
            ) : (
              <span className="draft-note">{asked === place ? "now" : "to come"}</span>
            )}
          </li>
        ))}
      </ol>
      {pointedPair(now, "centre line") && (
        <Press weight="small" onClick={() => tell({ do: "turn round" })}>
          The audience is at the other end
        </Press>
      )}
      {now.asksSize && <KnownLength pointing={pointing} units={units} />}
    </section>
  );
}

/** How far apart the two places of the size are. */
function KnownLength({ pointing, units }: Props) {
  const id = useId();
  const { written, tell, ...now } = useStore(pointing);
  const typed = typedLength(written, units);
  const [left, setLeft] = useState(false);
  const wrong = left && written.trim() !== "" && !typed.ok ? typed.say : null;
  return (
    <div className="draft-field">
      <label htmlFor={id} className="small-lettering">
        How long that is
      </label>
      <input
        id={id}
        type="text"
        className="look-list"
        autoComplete="off"
        spellCheck={false}
        value={written}
        aria-invalid={wrong !== null}
        aria-describedby={`${id}-note`}
        onChange={(event) => {
          setLeft(false);
          tell({ do: "write", text: event.target.value });
        }}
        onBlur={() => setLeft(true)}
      />
      <p id={`${id}-note`} className={wrong ? "draft-wrong" : "draft-note"} role={wrong ? "alert" : undefined}>
        {wrong ??
          (pointedPair(now, "size")
            ? "The length between the two places marked L."
            : "Point at both ends of it, and write its length here.")}
      </p>
    </div>
  );
}
