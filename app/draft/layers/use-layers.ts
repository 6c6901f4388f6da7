"use client";

import { useMemo, useRef } from "react";
import { type Draw, type Layering, layOut } from "./layering";
import type { Drawn } from "./touched";

/** A drawing in layers at rest, and what of it moves while something else stands in for it. Only what has changed is drawn anew. */
export function useLayers(draw: Draw, rest: Drawn): Layering {
  const last = useRef<Layering | null>(null);
  return useMemo(() => {
    last.current = layOut(draw, rest, last.current?.memories() ?? []);
    return last.current;
  }, [draw, rest]);
}
