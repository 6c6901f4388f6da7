"use client";

import { useState } from "react";
import type { Viewer } from "@/lib/stage/viewer";
import { useDesk, useExercise, useShownExercise } from "../desk/draft-context";
import { useApply } from "../desk/use-apply";
import { ChoiceField, LengthField } from "../fields/fields";
import { backWallRise } from "../picture/use-back-wall";

const WAYS = ["distance", "seat", "picture"] as const;
type Way = (typeof WAYS)[number];
const WAY_WORDS: Readonly<Record<Way, string>> = {
  distance: "its distance and height",
  seat: "a seat in the house",
  picture: "the back wall in the picture",
};

/**
 * The eye of someone seated, above the floor the seat stands on, metres: the mean of the medians of men and women, seat height
 * and eye above the seat added (ANSUR II, 2012: 1234 and 1136 mm).
 */
const SEATED_EYE_M = 1.185;

/** Where the eye is, said in one of three ways. */
export function EyeFields() {
  const { viewer } = useExercise();
  const shown = useShownExercise();
  const { backWallRise: rise } = useDesk((desk) => desk.history.draft);
  const [way, setWay] = useState<Way>(rise === null ? "distance" : "picture");
  const apply = useApply();
  const set = (change: Partial<Viewer>) => apply({ edit: "set-viewer", viewer: { ...viewer, ...change } });
  const away = (distance: number) =>
    distance > 0 ? set({ distance }) : "The eye stands before the plaster line: more than 0 from it.";
  const foot = backWallRise(shown.stage, shown.viewer) ?? 0;
  return (
    <>
      <h2 className="lettering">Eye</h2>
      <div className="draft-fields">
        <ChoiceField label="Set by" words={WAY_WORDS} order={WAYS} value={way} onChoice={setWay} />
        {way === "distance" && (
          <>
            <LengthField label="From the plaster line" metres={shown.viewer.distance} onLength={away} />
            <LengthField
              label="Above the stage"
              metres={shown.viewer.eyeHeight}
              onLength={(eyeHeight) => set({ eyeHeight })}
            />
          </>
        )}
        {way === "seat" && (
          <>
            <LengthField label="Row, from the plaster line" metres={shown.viewer.distance} onLength={away} />
            <LengthField
              label="Row's floor, above the stage"
              metres={shown.viewer.eyeHeight - SEATED_EYE_M}
              onLength={(floor) => set({ eyeHeight: floor + SEATED_EYE_M })}
              note="With a minus where it lies below the stage. Someone seated is added."
            />
          </>
        )}
        {way === "picture" && (
          <>
            <LengthField
              label="Back wall's foot, above the plaster line"
              metres={foot}
              onLength={(height) => apply({ edit: "set-back-wall-rise", rise: height })}
              note="Or take hold of the blue line in the picture."
            />
            <LengthField
              label="Eye, above the stage"
              metres={shown.viewer.eyeHeight}
              onLength={(eyeHeight) => set({ eyeHeight })}
            />
          </>
        )}
        <LengthField
          label="From the centre line"
          metres={shown.viewer.offset}
          onLength={(offset) => set({ offset })}
          note="Stage left; with a minus toward stage right."
        />
      </div>
    </>
  );
}
