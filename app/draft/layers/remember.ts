import type { DisplayList } from "@/lib/drawing/display-list";

/** What is drawn of one thing, with a name of its own. */
export type Layer = { readonly key: string; readonly list: DisplayList };

type Kept = { readonly deps: readonly unknown[]; readonly list: DisplayList };

/** The lists drawn last time, by name, with what each was drawn from. */
export type Memory = Map<string, Kept>;

/** Draws a thing, unless what it is drawn from is the same as before: then its list is the very same. */
export type Remember = (key: string, deps: readonly unknown[], draw: () => DisplayList) => Layer;

/** Looks in the memories given, and notes everything in the first. */
export function rememberIn(now: Memory, ...before: readonly Memory[]): Remember {
  return (key, deps, draw) => {
    for (const memory of [now, ...before]) {
      const kept = memory.get(key);
      if (!kept || !sameAll(kept.deps, deps)) continue;
      now.set(key, kept);
      return { key, list: kept.list };
    }
    const list = draw();
    now.set(key, { deps, list });
    return { key, list };
  };
}

function sameAll(a: readonly unknown[], b: readonly unknown[]): boolean {
  return a.length === b.length && a.every((each, i) => each === b[i]);
}
