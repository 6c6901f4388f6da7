import type { StagePoint } from "../../stage/frame";

/** What a face is a piece of, for its tone and its hatching. */
export type FaceKind =
  | "wall"
  | "reveal"
  | "leaf"
  | "platform"
  | "stair"
  | "furniture"
  | "column"
  | "cloth"
  | "proscenium"
  | "figure";

/**
 * A flat piece of opaque surface of the set, seen from both sides. All its points lie in one plane, metres; the outline
 * runs counter-clockwise seen from its outer side, and holes clockwise. Holes lie inside the outline and apart.
 */
export type Face = {
  readonly id: string;
  /** The id of the element it belongs to. */
  readonly element: string;
  readonly kind: FaceKind;
  readonly outline: readonly StagePoint[];
  readonly holes: readonly (readonly StagePoint[])[];
};

/**
 * A straight line of a solid. `faces` are the faces that meet in it, one or two, by their places in `Solid.faces`; a line
 * that lies on a face, as a panel's, names that face alone and is no edge of it.
 */
export type SolidLine = {
  readonly id: string;
  readonly element: string;
  readonly from: StagePoint;
  readonly to: StagePoint;
  readonly faces: readonly number[];
  /**
   * `edge`: a real edge, always drawn. `smooth`: an edge between facets of a curved surface, drawn only where it is the
   * outline from where the eye stands. `detail`: a line on a surface (a panel, a nosing's shadow, a glazing bar), drawn thin.
   */
  readonly kind: "edge" | "smooth" | "detail";
};

/** A body, or several. Faces may touch and pass through one another. */
export type Solid = { readonly faces: readonly Face[]; readonly lines: readonly SolidLine[] };
