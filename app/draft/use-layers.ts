"use client";

import { useMemo, useRef } from "react";
import { type Layer, type Memory, type Remember, rememberIn } from "./remember";
import { type Drawn, type Touched, touchedSince } from "./touched";

export type SplitLayers = {
  /** What stays as it is while something is dragged: the very same list from one moment to the next. */
  readonly still: readonly Layer[];
  /** What moves. */
  readonly moving: readonly Layer[];
};

type Split = SplitLayers & { readonly of: readonly Layer[]; readonly moved: string };

/** Draws all of a plan in layers, or only what was touched of it. */
type Draw = (drawn: Drawn, remember: Remember, touched?: Touched) => readonly Layer[];

const NONE: readonly Layer[] = [];

/**
 * A drawing in layers, split into what stays and what moves while `trying` stands in for `rest`: the browser then paints only
 * what moves. Lists are drawn anew only where what they are drawn from has changed.
 */
export function useLayers(draw: Draw, rest: Drawn, trying: Drawn | null): SplitLayers {
  const atRest = useRef<Memory>(new Map());
  const tried = useRef<Memory>(new Map());
  const last = useRef<Split | null>(null);

  const still = useMemo(() => {
    const now: Memory = new Map();
    const layers = draw(rest, rememberIn(now, atRest.current, tried.current));
    atRest.current = now;
    return layers;
  }, [draw, rest]);

  const stands = useMemo(() => new Set(still.map(({ list }) => list)), [still]);
  return useMemo(() => {
    if (trying === null) {
      last.current = null;
      return { still, moving: NONE };
    }
    const now: Memory = new Map();
    const touched = touchedSince(rest, trying);
    const layers = draw(trying, rememberIn(now, atRest.current, tried.current), touched);
    tried.current = now;
    const moving = layers.filter(({ list }) => !stands.has(list));
    const gone = new Set(moving.map(({ key }) => key));
    if (touched.walls === trying.plan.walls) {
      // All of it was drawn: what has no layer any more is gone.
      const there = new Set(layers.map(({ key }) => key));
      for (const { key } of still) if (!there.has(key)) gone.add(key);
    }
    const moved = [...gone].join(" ");
    if (last.current?.of !== still || last.current.moved !== moved)
      last.current = { of: still, moved, still: still.filter(({ key }) => !gone.has(key)), moving };
    return { still: last.current.still, moving };
  }, [draw, still, stands, rest, trying]);
}
