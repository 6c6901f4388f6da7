"use client";

import { useState } from "react";
import { Press } from "@/app/_parts/press";
import type { Heights } from "@/lib/draft/bring/place/as-brought-runs";
import type { Placed } from "@/lib/draft/bring/place/place-brought";
import { sayPlaced } from "@/lib/draft/bring/place/say-placed";
import type { LengthUnits } from "@/lib/measure/length";
import { HeightFields } from "./height-fields";
import { PUT_ON_KEYS, type PutOnKey } from "./put-on-choices";

type Props = {
  readonly placed: Placed | null;
  readonly working: boolean;
  /** What is still to be said before anything can come out; empty for nothing. */
  readonly missing: string;
  readonly units: LengthUnits;
  readonly heights: Heights;
  readonly onHeights: (heights: Heights) => void;
  readonly on: PutOnKey;
  /** What the plan on the table is called; null for none. */
  readonly table: string | null;
  readonly onPutOn: (on: PutOnKey) => void;
  /** Puts it there; a sentence says why it cannot be. */
  readonly onPut: () => string | null;
};

/** What comes out of the drawing as it is now, and putting it on a plan. */
export function ComesOut({ placed, working, missing, units, heights, onHeights, on, table, onPutOn, onPut }: Props) {
  const [trouble, setTrouble] = useState<string | null>(null);
  const words = missing || !placed ? [missing] : placed.ok ? sayPlaced(placed.draft, placed.made, units) : [placed.say];
  const said: Readonly<Record<PutOnKey, string | null>> = {
    "new-ft": "a new plan in feet",
    "new-m": "a new plan in metres",
    table: table && `“${table}”, the plan on the table`,
  };
  return (
    <section aria-labelledby="comes-out">
      <h2 id="comes-out" className="lettering">
        What comes out
      </h2>
      <div role="status" className="bring-out" data-state={missing ? "missing" : working ? "working" : "out"}>
        {words.map((each) => (
          <p key={each} className={placed && !placed.ok && !missing ? "draft-wrong" : undefined}>
            {each}
          </p>
        ))}
      </div>
      <HeightFields heights={heights} units={units} onHeights={onHeights} />
      <p className="draft-note">
        A plan tells no heights: these are what walls and openings get, and each can be changed on the desk.
      </p>
      <div className="draft-typed">
        <div className="draft-field bring-put-on">
          <label htmlFor="put-on" className="small-lettering">
            Put it on
          </label>
          <select
            id="put-on"
            className="look-list"
            value={on}
            onChange={(event) => {
              const key = PUT_ON_KEYS.find((each) => each === event.target.value);
              if (key) onPutOn(key);
            }}
          >
            {PUT_ON_KEYS.filter((key) => said[key] !== null).map((key) => (
              <option key={key} value={key}>
                {said[key]}
              </option>
            ))}
          </select>
        </div>
        <Press weight="main" disabled={!placed?.ok || working || missing !== ""} onClick={() => setTrouble(onPut())}>
          Put it on the plan
        </Press>
      </div>
      {trouble && (
        <p className="draft-wrong" role="alert">
          {trouble}
        </p>
      )}
      <p className="draft-note">
        There it can be undone in one step. A teaching sketch is not a construction drawing: stairs, platforms, rakes
        and openings are for licensed practice and the local codes to decide.
      </p>
    </section>
  );
}
