"use client";

import { useMemo } from "react";
import { askKind, type KindAsked, kindsAsked } from "@/lib/draft/exercise-desk/kinds-asked";
import { capital } from "@/lib/plan/first-letter";
import type { ExercisePart } from "./exercise-part";

/** A whole kind of points asked, or none of it, with one tick: the quickest way to a short exercise from a full plan. */
export function KindsAsked({ draft, apply }: ExercisePart) {
  const { exercise } = draft;
  const kinds = useMemo(() => kindsAsked(exercise), [exercise]);
  if (kinds.length === 0) return null;
  return (
    <fieldset className="kinds-asked">
      <legend className="lettering">What is asked, by kind</legend>
      {kinds.map((kind) => (
        <KindTick key={kind.key} kind={kind} onAsk={(ask) => apply(askKind(exercise, kind.key, ask))} />
      ))}
    </fieldset>
  );
}

function KindTick({ kind, onAsk }: { readonly kind: KindAsked; readonly onAsk: (ask: boolean) => void }) {
  const { words, places, used } = kind;
  const some = used > 0 && used < places;
  return (
    <label className="kind-tick">
      <input
        type="checkbox"
        checked={used === places}
        ref={(input) => {
          if (input) input.indeterminate = some;
        }}
        onChange={() => onAsk(used < places)}
      />
      <span>
        {capital(words)}: {used} of {places}
      </span>
    </label>
  );
}
