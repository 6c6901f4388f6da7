import type { ComponentType } from "react";

/** A part of the desk whose scripts come when it is first shown, so that drawing can begin without them. */
export type Part<Props> = {
  /** What it is called, for whoever waits or must try again; null for what has no place to say so, and is not there until it comes. */
  readonly what: string | null;
  /** The part, once it has come: it is at hand when it is shown again. */
  readonly here: () => ComponentType<Props> | null;
  /** Fetches it. What could not be fetched is asked for anew the next time. */
  readonly fetch: () => Promise<ComponentType<Props>>;
};

export function namePart<Props>(what: string | null, bring: () => Promise<ComponentType<Props>>): Part<Props> {
  let come: ComponentType<Props> | null = null;
  return {
    what,
    here: () => come,
    fetch: async () => {
      come ??= await bring();
      return come;
    },
  };
}

/** Fetches a part before it is shown, as when a pointer comes near what opens it. Should it not come, that is said where it is shown. */
export function fetchAhead<Props>(part: Part<Props>): void {
  part.fetch().catch(() => null);
}
