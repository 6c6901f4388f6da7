import type { Plane } from "./view";

/** A blue line of the straightedge: through two points of one drawing, metres; it runs on past both. */
export type ConstructionLine = {
  readonly id: number;
  readonly plane: Plane;
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
  /** What the ends were caught on, in words, for the list of lines. */
  readonly through: readonly [string, string];
};
