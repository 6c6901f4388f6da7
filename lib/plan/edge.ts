/** What an edge of the set is, for its weight and for what it means when drawn. */
export type EdgeKind =
  | "foot"
  | "top"
  | "upright"
  | "opening"
  | "platform"
  | "stair"
  | "furniture"
  | "column"
  | "masking";

/** A straight line of the set between two named points; it can be drawn as soon as both are on the sheet. */
export type Edge = {
  readonly id: string;
  /** The id of the wall, platform, stair, furniture, column or masking it belongs to. */
  readonly element: string;
  readonly kind: EdgeKind;
  readonly from: string;
  readonly to: string;
};
