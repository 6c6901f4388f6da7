import type { PlanPoint } from "../stage/frame";

/**
 * The ground plan, with every length in metres and every default filled in. Heights are above the stage
 * floor where the thing stands, plus its `base`; see each kind for which floor that is.
 */
export type Plan = {
  /** Named corners, in the order written. */
  readonly corners: ReadonlyMap<string, PlanPoint>;
  readonly walls: readonly Wall[];
  readonly platforms: readonly Platform[];
  readonly stairs: readonly Stair[];
  readonly furniture: readonly Furniture[];
  readonly columns: readonly Column[];
  readonly masking: readonly Masking[];
};

export type Side = "left" | "right";

/** A wall runs straight between two corners; its drawn line is the onstage face. */
export type Wall = {
  readonly id: string;
  readonly from: string;
  readonly to: string;
  /** Its top is level, this far above the stage floor at the plaster line, plus `base`. */
  readonly height: number;
  /** Goes offstage of the drawn line. */
  readonly thickness: number;
  readonly base: number;
  /** Which hand of from -> to is onstage. */
  readonly onstage: Side;
  readonly openings: readonly Opening[];
};

export const OPENING_KINDS = ["door", "window", "arch", "passage", "niche"] as const;
export type OpeningKind = (typeof OPENING_KINDS)[number];

export type Opening = {
  readonly id: string;
  readonly kind: OpeningKind;
  /** Along the wall from its `from` corner to the nearer jamb. */
  readonly at: number;
  readonly width: number;
  /** Above the floor under the middle of the opening, plus the wall's base; 0 follows the floor. */
  readonly sill: number;
  /** As the sill; of an arch, its crown. */
  readonly head: number;
  /** How far a niche goes in; null for the others. */
  readonly depth: number | null;
  readonly leaves: 1 | 2;
  /** The jamb that carries the hinges; null means the upstage one. */
  readonly hinge: "start" | "end" | null;
  readonly swing: "onstage" | "offstage";
};

/** A platform's top is level, `height` above the floor at its first corner, plus `base`. */
export type Platform = {
  readonly id: string;
  readonly outline: readonly PlanPoint[];
  readonly height: number;
  readonly base: number;
};

/** A flight climbs to the left of its lowest nosing, first -> second; `steps` counts risers. */
export type Stair = {
  readonly id: string;
  readonly nosing: readonly [first: PlanPoint, second: PlanPoint];
  readonly steps: number;
  readonly tread: number;
  readonly riser: number;
  readonly base: number;
};

export const FURNITURE_KINDS = [
  "box",
  "table",
  "chair",
  "stool",
  "sofa",
  "bed",
  "desk",
  "chest",
  "bench",
  "bookcase",
  "stove",
  "piano",
  "counter",
] as const;
export type FurnitureKind = (typeof FURNITURE_KINDS)[number];

/** Furniture is its bounding box; its front faces the audience at turn 0. */
export type Furniture = {
  readonly id: string;
  readonly kind: FurnitureKind;
  /** Its centre on the floor. */
  readonly at: PlanPoint;
  /** Counter-clockwise seen from above, radians. */
  readonly turn: number;
  readonly width: number;
  readonly depth: number;
  readonly height: number;
  readonly base: number;
};

export type Column = {
  readonly id: string;
  readonly at: PlanPoint;
  readonly diameter: number;
  readonly height: number;
  readonly base: number;
};

export const MASKING_KINDS = ["leg", "border", "backing"] as const;
export type MaskingKind = (typeof MASKING_KINDS)[number];

/** A hanging or standing cloth or flat that hides what is not the set; drawn as one line in the plan. */
export type Masking = {
  readonly id: string;
  readonly kind: MaskingKind;
  readonly line: readonly [PlanPoint, PlanPoint];
  /** Height of its lower edge above the stage floor at the plaster line; null for a leg or backing, which reaches the floor. */
  readonly trim: number | null;
  /** Of a leg or backing its top, above the stage floor at the plaster line; of a border its drop, from the trim up. */
  readonly height: number;
};
