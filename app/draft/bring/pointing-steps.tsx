"use client";

import { useStore } from "zustand";
import { Press } from "@/app/_parts/press";
import { placesAsked, pointedPair } from "@/lib/draft/bring/pointing/pointing";
import { PLACE_WORDS } from "@/lib/draft/bring/pointing/say-pointing";
import type { LengthUnits } from "@/lib/measure/length";
import { TypedLength } from "../fields/typed-length";
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
  const { written, tell, ...now } = useStore(pointing);
  return (
    <TypedLength
      label="How long that is"
      value={written}
      units={units}
      onChange={(text) => tell({ do: "write", text })}
      note={
        pointedPair(now, "size")
          ? "The length between the two places marked L."
          : "Point at both ends of it, and write its length here."
      }
    />
  );
}
