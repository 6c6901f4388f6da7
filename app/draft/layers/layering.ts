import type { Exercise } from "@/lib/exercise/exercise";
import { type Layer, type Memory, type Remember, rememberIn } from "./remember";
import { type Drawn, type Touched, touchedSince } from "./touched";

/** Draws all of a plan in layers, or only what was touched of it. */
export type Draw = (drawn: Drawn, remember: Remember, touched?: Touched) => readonly Layer[];

export type TriedLayers = {
  /** What is drawn otherwise than at rest. */
  readonly moving: readonly Layer[];
  /** The names of the layers at rest that it stands in for: the very same set as long as they are the same. */
  readonly gone: ReadonlySet<string>;
};

export type Layering = {
  readonly still: readonly Layer[];
  /** What moves while this stands in for what is at rest. Asked again for the same, it is not drawn again. */
  readonly tried: (trying: Pick<Exercise, "plan" | "stage" | "viewer" | "units">) => TriedLayers;
  /** What has been drawn, for the next drawing. */
  readonly memories: () => readonly Memory[];
};

/**
 * A drawing in layers, and what of it moves while something is dragged: the layers at rest without those that are gone, with the
 * moving ones, are what the whole would be if it were drawn anew.
 */
export function layOut(draw: Draw, rest: Drawn, before: readonly Memory[] = []): Layering {
  const atRest: Memory = new Map();
  const still = draw(rest, rememberIn(atRest, ...before));
  const stands = new Set(still.map(({ list }) => list));
  const names = new Set(still.map(({ key }) => key));
  const byName = new Map(still.map((layer) => [layer.key, layer]));
  let lately: Memory = new Map();
  let last: { readonly of: unknown; readonly tried: TriedLayers } | null = null;

  const draft = (trying: Drawn): TriedLayers => {
    const now: Memory = new Map();
    const touched = touchedSince(rest, trying);
    const layers = draw(trying, rememberIn(now, atRest, lately), touched);
    lately = now;
    const moving = layers.filter(({ list }) => !stands.has(list));
    const drawn = new Set(moving.map(({ key }) => key));
    const gone = new Set(moving.flatMap(({ key }) => (names.has(key) ? [key] : [])));
    if (touched.walls === trying.plan.walls) {
      // All of it was drawn: what has no layer any more is gone.
      const there = new Set(layers.map(({ key }) => key));
      for (const key of names) if (!there.has(key)) gone.add(key);
    }
    const stood = last?.tried.gone;
    if (!stood || isSame(stood, gone)) return { moving, gone: stood ?? gone };
    if (stood.size > MOST_KEPT_OFF) return { moving, gone };
    // What was off the paper a moment ago stays off it, and is painted as it stands: each coming and going costs a whole drawing.
    const back = [...stood].flatMap((key) => (gone.has(key) || drawn.has(key) ? [] : (byName.get(key) ?? [])));
    for (const key of stood) gone.add(key);
    return { moving: [...back, ...moving], gone: isSame(stood, gone) ? stood : gone };
  };
  return {
    still,
    tried: (trying) => {
      if (last?.of !== trying) {
        const { plan, stage, viewer, units } = trying;
        last = { of: trying, tried: draft({ plan, stage, viewer, units, scaleRatio: rest.scaleRatio }) };
      }
      return last.tried;
    },
    memories: () => [atRest, lately],
  };
}

/** More layers than this are put back as soon as they stand as before. */
const MOST_KEPT_OFF = 80;

function isSame(a: ReadonlySet<string>, b: ReadonlySet<string>): boolean {
  return a.size === b.size && [...a].every((each) => b.has(each));
}
