import type { Along } from "./wall-piece";

/** An opening as found on a wall, from `start` to `end` along it, metres. `left` tells that its leaves open to the wall's left. */
export type FoundOpening = {
  readonly start: number;
  readonly end: number;
  readonly kind: "door" | "window" | "passage" | "niche";
  /** How far a niche goes in from the drawn face; null for the others. */
  readonly depth: number | null;
  readonly leaves: 1 | 2;
  readonly hinge: "start" | "end" | null;
  readonly left: boolean;
  /** Which of the shapes it accounts for. */
  readonly shapes: readonly number[];
};

/** A wall's line with how far its body reaches to its left and right, metres. */
export type WallBand = Along & { readonly toLeft: number; readonly toRight: number };
