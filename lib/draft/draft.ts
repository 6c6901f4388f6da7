import type { Exercise } from "../exercise/exercise";

/**
 * A plan on the drafting desk, with the exercise that it becomes: everything in metres and radians, defaults filled in. It may
 * make no sense yet. Whether the marks are the author's own or worked out anew with every change stands in `marksBy`.
 */
export type Draft = {
  readonly exercise: Exercise;
  readonly marksBy: "order" | "author";
  /** The back wall's foot as the author set it, metres above the plaster line's foot in the picture; null: by the eye's distance. */
  readonly backWallRise: number | null;
};

/** The things of a plan that can be chosen, moved, copied and taken away. */
export type Thing =
  | { readonly kind: "corner"; readonly id: string }
  | { readonly kind: "wall"; readonly id: string }
  | { readonly kind: "opening"; readonly wall: string; readonly id: string }
  | { readonly kind: "platform"; readonly id: string }
  | { readonly kind: "stair"; readonly id: string }
  | { readonly kind: "furniture"; readonly id: string }
  | { readonly kind: "column"; readonly id: string }
  | { readonly kind: "masking"; readonly id: string };
