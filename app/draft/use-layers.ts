"use client";

import { useMemo, useRef } from "react";
import { type Layer, type Memory, type Remember, rememberIn } from "./remember";

export type SplitLayers = {
  /** What stays as it is while something is dragged: the very same list from one moment to the next. */
  readonly still: readonly Layer[];
  /** What moves. */
  readonly moving: readonly Layer[];
};

type Split = SplitLayers & { readonly of: readonly Layer[]; readonly moved: string };

const NONE: readonly Layer[] = [];

/**
 * A drawing in layers, split into what stays and what moves while `trying` stands in for `rest`: the browser then paints only
 * what moves. Lists are drawn anew only where what they are drawn from has changed.
 */
export function useLayers<T>(
  draw: (drawn: T, remember: Remember) => readonly Layer[],
  rest: T,
  trying: T | null,
): SplitLayers {
  const atRest = useRef<Memory>(new Map());
  const tried = useRef<Memory>(new Map());
  const last = useRef<Split | null>(null);

  const still = useMemo(() => {
    const now: Memory = new Map();
    const layers = draw(rest, rememberIn(now, atRest.current, tried.current));
    atRest.current = now;
    return layers;
  }, [draw, rest]);

  return useMemo(() => {
    if (trying === null) {
      last.current = null;
      return { still, moving: NONE };
    }
    const now: Memory = new Map();
    const layers = draw(trying, rememberIn(now, atRest.current, tried.current));
    tried.current = now;
    const stands = new Set(still.map(({ list }) => list));
    const moving = layers.filter(({ list }) => !stands.has(list));
    const there = new Set(layers.map(({ list }) => list));
    const gone = new Set(still.flatMap(({ key, list }) => (there.has(list) ? [] : [key])));
    const moved = [...gone].join(" ");
    if (last.current?.of !== still || last.current.moved !== moved)
      last.current = { of: still, moved, still: still.filter(({ key }) => !gone.has(key)), moving };
    return { still: last.current.still, moving };
  }, [draw, still, trying]);
}
