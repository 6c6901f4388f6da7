"use client";

import { useMemo } from "react";
import { useStore } from "zustand";
import type { Heights } from "@/lib/draft/bring/place/as-brought-runs";
import type { LayerUse, Placing } from "@/lib/draft/bring/place/place-brought";
import type { PlaceScale } from "@/lib/draft/bring/place/place-frame";
import type { SizeChoice } from "@/lib/draft/bring/place/size-choices";
import { type Pointing, pointedPair } from "@/lib/draft/bring/pointing/pointing";
import { typedLength } from "@/lib/draft/snapping/typed-point";
import type { LengthUnits } from "@/lib/measure/length";
import type { PointingStore } from "./pointing-store";

type Said = {
  readonly pointing: PointingStore;
  readonly size: SizeChoice | null;
  readonly uses: Readonly<Record<string, LayerUse>>;
  readonly heights: Heights;
  readonly units: LengthUnits;
};

export type PlacingAsked = { readonly placing: Placing | null; readonly missing: string };

/** What is said of a drawing so far, or what is still missing, in a sentence. The same as before while nothing of it changes. */
export function usePlacingAsked({ pointing, size, uses, heights, units }: Said): PlacingAsked {
  const places = useStore(pointing, (now) => now.places);
  const written = useStore(pointing, (now) => now.written);
  return useMemo(() => {
    const [centreLine, plasterLine] = [pointedPair({ places }, "centre line"), pointedPair({ places }, "plaster line")];
    if (!centreLine) return missing("Point at the centre line, or take the one that may be meant.");
    if (!plasterLine) return missing("Point at the plaster line, or take the one that may be meant.");
    if (!size) return missing("Choose its size.");
    const scale = size.scale ?? scaleByLength(places, written, units);
    if (typeof scale === "string") return missing(scale);
    return { placing: { layerUse: uses, centreLine, plasterLine, scale, heights }, missing: "" };
  }, [places, written, size, uses, heights, units]);
}

function missing(say: string): PlacingAsked {
  return { placing: null, missing: say };
}

function scaleByLength(places: Pointing["places"], written: string, units: LengthUnits): PlaceScale | string {
  const pair = pointedPair({ places }, "size");
  if (!pair) return "Point at both ends of something whose length you know.";
  const typed = typedLength(written, units);
  if (written.trim() === "") return "Write how long the known length is.";
  return typed.ok ? { by: "length", from: pair[0], to: pair[1], length: typed.metres } : typed.say;
}
