import type { Problem } from "../../exercise/problem";

/** A place of a drawing that was brought: x to the right, y up its sheet, in the unit that `BroughtUnit` tells. */
export type BroughtPoint = readonly [x: number, y: number] & { readonly frame?: "brought" };

/** One unbroken line of a drawing; a closed one ends where it began. A line with corners and bends comes as several. */
export type BroughtLine = {
  readonly points: readonly BroughtPoint[];
  /** Points of a bend, close enough to be drawn as it; else every point is a corner. */
  readonly curved: boolean;
};

export type BroughtLayer = {
  readonly name: string;
  /** Frozen or switched off where it was drawn. */
  readonly hidden: boolean;
  readonly lines: readonly BroughtLine[];
};

/**
 * What the numbers of a brought drawing are. `stage`: metres of the stage. `paper`: metres of the paper it is drawn on, at a scale
 * that the file does not tell. `unknown`: nothing told; `likely` are units that would make it a stage's size, the likeliest first.
 */
export type BroughtUnit =
  | { readonly kind: "stage"; readonly name: string }
  | { readonly kind: "paper"; readonly name: string }
  | { readonly kind: "unknown"; readonly likely: readonly LikelyUnit[] };

export type LikelyUnit = { readonly name: string; readonly metres: number };

/** Something in the file that is no part of what was brought. */
export type NotUnderstood = {
  /** In the plural, for "12 pieces of lettering". */
  readonly what: string;
  readonly count: number;
  /** The first places, for looking there: "line 120, layer Notes". */
  readonly where: readonly string[];
  /** Where the first of them lie, of those whose place is known; the drawing's own unit. */
  readonly at: readonly BroughtPoint[];
};

export type Brought = {
  readonly file: "DXF" | "SVG";
  readonly unit: BroughtUnit;
  /** Layers with something on them, in the file's order. */
  readonly layers: readonly BroughtLayer[];
  readonly notUnderstood: readonly NotUnderstood[];
};

export type BringReading =
  | { readonly ok: true; readonly brought: Brought }
  | { readonly ok: false; readonly problem: Problem };

/** A plan is far smaller; more would hold up the page that reads it. */
export const MOST_BYTES = 20 * 1024 * 1024;
export const MOST_ELEMENTS = 200_000;
/** Points of all lines together, once copies of blocks are laid out and bends are drawn. */
export const MOST_POINTS = 2_000_000;
