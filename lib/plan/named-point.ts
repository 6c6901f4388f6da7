import type { StagePoint } from "../stage/frame";

/** What part of the plan a named point belongs to. */
export type PointGroup = "corner" | "opening" | "platform" | "stair" | "furniture" | "column" | "masking";

/**
 * What a named point is.
 * `foot` stands on the floor (or on its base), `top` is straight above a foot, `sill` and `head` are the ends of a
 * jamb, `nosing` is an end of a stair's edge, `trim` an end of a border's lower edge.
 */
export type PointRole = "foot" | "top" | "sill" | "head" | "nosing" | "trim";

export type NamedPoint = {
  readonly name: string;
  readonly group: PointGroup;
  readonly role: PointRole;
  /** The id of the element it belongs to: a corner's name, or a wall's, platform's, stair's, furniture's, column's, masking's id. */
  readonly element: string;
  readonly at: StagePoint;
  /** The named point straight below it that it stands over (a top's foot, a head's sill), or null. */
  readonly over: string | null;
  /** True where the point lies on the floor itself (or on the level its element stands on), so that a mark means a place. */
  readonly onFloor: boolean;
  /** How far the surface it stands on lies above the stage floor there, metres: the element's base. */
  readonly base: number;
};

/** All named points of a plan, by name, in the plan's order. */
export type NamedPoints = ReadonlyMap<string, NamedPoint>;
