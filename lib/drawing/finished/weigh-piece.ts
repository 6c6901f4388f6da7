import { between } from "../../geometry/vector";
import type { FaceKind, SolidLine } from "../../plan/solids/solid";
import type { LineWeight } from "../display-list";
import type { VisibleLine } from "../hidden-lines/visible-lines";
import type { Gaze } from "./look-through";

export type Pencilled = { readonly weight: LineWeight; readonly faint: boolean };

/** Beside a line one looks at the picture this far off it, millimetres of paper: past the pencil's own width. */
const BESIDE_MM = 0.5;
/** A mass is at least this wide on paper; a table's leg and a glazing bar are none, millimetres. */
const MASS_MM = 2.6;
/** What lies this far behind a line, metres, makes it the outline of a mass before it. */
const FAR_BEHIND_M = 0.6;
/** Furniture is small and has many edges: only what lies farther behind makes an outline of one. */
const FAR_BEHIND_FURNITURE_M = 1.2;
/** Lines of furniture shorter than this stay thin, millimetres of paper. */
const HEAVY_FROM_MM = 2;

/**
 * How hard the pencil presses on a piece of line: the outline of a mass against what lies far behind it is thick, an edge within
 * a mass or where it stands thin, and so are leaves, sashes and the figure; what is drawn on a surface is thin and faint. `depth` is how far upstage of the eye the middle of
 * the piece lies, metres; `mm` a millimetre of paper in the picture's metres.
 */
export function weighPiece(
  piece: VisibleLine,
  line: SolidLine,
  of: FaceKind | null,
  { depthAt }: Pick<Gaze, "depthAt">,
  depth: number,
  mm: number,
): Pencilled {
  const isBare = line.faces.length === 0;
  if (line.kind === "detail") return { weight: "thin", faint: true };
  const thin = { weight: "thin", faint: false } as const;
  const [dx, dz] = [piece.to[0] - piece.from[0], piece.to[1] - piece.from[1]];
  const length = Math.hypot(dx, dz);
  if (isBare || of === "figure" || of === "leaf" || (of === "furniture" && length < HEAVY_FROM_MM * mm)) return thin;
  const [X, Z] = between(piece.from, piece.to, 0.5);
  const behind = (offMm: number) => depthAt([X - (dz / length) * offMm * mm, Z + (dx / length) * offMm * mm]) - depth;
  const far = of === "furniture" ? FAR_BEHIND_FURNITURE_M : FAR_BEHIND_M;
  const isOutline = (side: 1 | -1) => behind(side * BESIDE_MM) > far && behind(-side * MASS_MM) <= far;
  return isOutline(1) || isOutline(-1) ? { weight: "thick", faint: false } : thin;
}
