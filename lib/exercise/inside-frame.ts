import { project } from "../perspective/project";
import type { PicturePoint } from "../stage/frame";
import type { Stage } from "../stage/stage";
import type { Viewer } from "../stage/viewer";

/** Room for rounding at the edge of the frame, metres. */
const EDGE_SLACK_M = 1e-6;

/** Picture height of the apron's edge, straight before the eye: how far below the plaster line the picture reaches. */
export function apronDrop(stage: Stage, viewer: Viewer): number {
  const edge = project(viewer, [viewer.offset, -stage.apron, 0]);
  return edge.seen ? Math.min(edge.at[1], 0) : 0;
}

/** Whether a picture point lies in the proscenium opening, or before it on the apron. */
export function insideFrame(stage: Stage, viewer: Viewer, [X, Z]: PicturePoint): boolean {
  const { width, height } = stage.opening;
  if (Z < 0) return Z >= apronDrop(stage, viewer) - EDGE_SLACK_M;
  return Math.abs(X) <= width / 2 + EDGE_SLACK_M && Z <= height + EDGE_SLACK_M;
}
