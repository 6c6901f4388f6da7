import type { LineType, LineWeight } from "./display-list";

/**
 * Line widths on paper, millimetres, in the drafting ratio 1 : 2 : 3. They lie near the theatre standard's thin, thick and
 * extra thick pens (0.3, 0.5, 0.7 to 0.9 mm, from memory) and the ISO pens 0.25 and 0.5.
 */
export const LINE_WEIGHT_MM: Readonly<Record<LineWeight, number>> = { thin: 0.25, thick: 0.5, "extra-thick": 0.75 };

/** Dashes and gaps on paper, millimetres; empty for an unbroken line. */
export const DASH_MM: Readonly<Record<LineType, readonly number[]>> = {
  solid: [],
  centre: [9, 1.5, 2, 1.5],
  plaster: [7, 2],
  hidden: [2, 1.2],
};
