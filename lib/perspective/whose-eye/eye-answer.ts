import type { EyeFigures } from "./eye-figures";
import type { Meeting } from "./fit-meeting";
import type { Sides } from "./place-eye";
import type { RectangleView } from "./read-rectangle";

/** A figure with one standard deviation, in the figure's own unit. */
export type Figure = { readonly value: number; readonly give: number };

export type FigureName = keyof EyeFigures;

export type EyeRefusal =
  /** The uprights draw together: the picture plane was not upright, and there are three vanishing points. */
  | "uprights meet"
  /** The uprights lean alike: the paper is turned. */
  | "drawing is turned"
  /** Level lines that do not all meet on one level line: no one eye sees them so. */
  | "no one horizon"
  | "rectangle is no outline"
  | "rectangle over the horizon";

export type WhoseEye =
  | {
      readonly kind: "told";
      readonly figures: Readonly<Record<FigureName, Figure | null>>;
      /** Where each group of parallels meets, in their order. */
      readonly meetings: readonly Meeting[];
      readonly rectangle: RectangleView | null;
      /** Where the rectangle's pairs of sides vanish, millimetres along the horizon; null for sides drawn level. */
      readonly sidesVanishAt: Sides;
      /** For a turned rectangle of unknown proportion: the eye is nowhere farther before the paper than this, millimetres. */
      readonly distanceAtMostMm: number | null;
      /** What is known, and then what is not and why, a sentence each. */
      readonly told: readonly string[];
      readonly untold: readonly string[];
    }
  | {
      readonly kind: "refused";
      readonly why: EyeRefusal;
      readonly meetings: readonly Meeting[];
      readonly say: string;
    };
