import { between } from "../../geometry/vector";
import type { SolidLine } from "../../plan/solids/solid";
import type { LineWeight } from "../display-list";
import type { VisibleLine } from "../hidden-lines/visible-lines";
import type { Gaze } from "./look-through";

export type Pencilled = { readonly weight: LineWeight; readonly faint: boolean };

/** Beside a line one looks at the picture this far off it, millimetres of paper: past the pencil's own width. */
const BESIDE_MM = 0.5;
/** What lies this far behind a line, metres, makes it the outline of a mass before it. */
const FAR_BEHIND_M = 0.6;
/** Furniture is small and has many edges: only what lies farther behind makes an outline of one. */
const FAR_BEHIND_FURNITURE_M = 1.2;
/** Shorter lines of furniture stay thin, millimetres of paper. */
const HEAVY_FROM_MM = 2;

/**
 * How hard the pencil presses on a piece of line: the outline of a mass against what lies far behind it is thick, an edge within
 * a mass or where it stands thin, what is drawn on a surface thin and faint.
 */
export function weighPiece(
  piece: VisibleLine,
  line: SolidLine,
  { depthAt }: Pick<Gaze, "depthAt">,
  depth: number,
  mm: number,
  isFurniture: boolean,
): Pencilled {
  if (line.element === "stage") return { weight: "thin", faint: line.kind !== "edge" };
  if (line.kind === "detail") return { weight: "thin", faint: true };
  const [dx, dz] = [piece.to[0] - piece.from[0], piece.to[1] - piece.from[1]];
  const length = Math.hypot(dx, dz);
  const thin = { weight: "thin", faint: false } as const;
  if (isFurniture && !(length > HEAVY_FROM_MM * mm)) return thin;
  if (line.id.includes(".sash.")) return thin;
  const [X, Z] = between(piece.from, piece.to, 0.5);
  const [nx, nz] = [(-dz / length) * BESIDE_MM * mm, (dx / length) * BESIDE_MM * mm];
  const behind = Math.max(depthAt([X + nx, Z + nz]), depthAt([X - nx, Z - nz])) - depth;
  return behind > (isFurniture ? FAR_BEHIND_FURNITURE_M : FAR_BEHIND_M) ? { weight: "thick", faint: false } : thin;
}
