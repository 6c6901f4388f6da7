"use client";

import { useEffect, useRef, useState } from "react";
import type { Placed, Placing } from "@/lib/draft/bring/place/place-brought";
import type { Draft } from "@/lib/draft/draft";
import type { BringDesk } from "./bring-desk";

/** So long after the last change the worker is asked, milliseconds: a height is typed letter by letter. */
const REST_MS = 120;

export type PlacedNow = {
  readonly placed: Placed | null;
  /** What it was placed with. */
  readonly placing: Placing | null;
  readonly working: boolean;
};

const NOTHING: PlacedNow = { placed: null, placing: null, working: false };

/** What would come of the drawing on a draft, anew whenever what is said of it changes; nothing while something is missing. */
export function usePlacing(desk: BringDesk, placing: Placing | null, draft: Draft | null): PlacedNow {
  const [now, setNow] = useState(NOTHING);
  const asked = useRef(0);
  useEffect(() => {
    asked.current += 1;
    const mine = asked.current;
    if (!placing || !draft) {
      setNow(NOTHING);
      return;
    }
    setNow((before) => ({ ...before, working: true }));
    const later = setTimeout(async () => {
      const placed = await desk
        .place(placing, draft)
        .catch((reason: Error): Placed => ({ ok: false, say: reason.message }));
      if (asked.current === mine) setNow({ placed, placing, working: false });
    }, REST_MS);
    return () => clearTimeout(later);
  }, [desk, placing, draft]);
  return now;
}
