import { project } from "../../perspective/project";
import type { StagePoint } from "../../stage/frame";
import type { Viewer } from "../../stage/viewer";
import type { DrawingPoint } from "../display-list";

/** Where a row of stage points falls in the picture, or null when any of them lies behind the eye. */
export function see(viewer: Viewer, points: readonly StagePoint[]): readonly DrawingPoint[] | null {
  const seen = points.map((point) => project(viewer, point));
  return seen.every((p) => p.seen) ? seen.map((p) => p.at) : null;
}
