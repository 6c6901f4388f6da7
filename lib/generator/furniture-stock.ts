import type { FurnitureKind } from "../plan/plan";

/** A stock piece, feet, and whether it stands free on the stage or with its back to a wall. */
export type FurnitureStock = {
  readonly width: number;
  readonly depth: number;
  readonly height: number;
  readonly stands: "free" | "wall" | "either";
};

/** Usual sizes, feet: a 30 in table, a 15 to 18 in seat, an arm's height of 30 in (TD&T Fall 1984 p. 11); the rest common practice, no source. */
export const FURNITURE_FT: Readonly<Partial<Record<FurnitureKind, FurnitureStock>>> = {
  table: { width: 5, depth: 3, height: 2.5, stands: "free" },
  sofa: { width: 6, depth: 2.5, height: 2.5, stands: "either" },
  desk: { width: 5, depth: 2.5, height: 2.5, stands: "either" },
  bed: { width: 4, depth: 6.5, height: 2, stands: "wall" },
  chest: { width: 4, depth: 2, height: 2, stands: "either" },
  box: { width: 3, depth: 3, height: 2.5, stands: "free" },
  counter: { width: 6, depth: 2, height: 3, stands: "free" },
  piano: { width: 5, depth: 2, height: 4, stands: "wall" },
  bookcase: { width: 4, depth: 1, height: 6, stands: "wall" },
  stove: { width: 3, depth: 2, height: 3, stands: "wall" },
  bench: { width: 5, depth: 1.5, height: 1.5, stands: "either" },
};
