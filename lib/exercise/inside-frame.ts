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

/**
 * Whether a straight line of the picture, end to end, passes through the proscenium opening: its stretch inside the
 * opening's width, cut to the stretch inside its height, is not empty.
 */
export function crossesFrame({ opening }: Pick<Stage, "opening">, [X, Z]: PicturePoint, [U, W]: PicturePoint): boolean {
  const across = stretchInside(X, U - X, -opening.width / 2, opening.width / 2);
  const up = stretchInside(Z, W - Z, 0, opening.height);
  return Math.max(0, across[0], up[0]) <= Math.min(1, across[1], up[1]);
}

/** The stretch of t in which start + t run lies between two bounds, first to last; first after last where it never does. */
function stretchInside(
  start: number,
  run: number,
  least: number,
  most: number,
): readonly [first: number, last: number] {
  if (run === 0)
    return least <= start && start <= most
      ? [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY]
      : [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  const [a, b] = [(least - start) / run, (most - start) / run];
  return a < b ? [a, b] : [b, a];
}

/** Whether a picture point lies in the proscenium opening, or before it on the apron. */
export function insideFrame(stage: Stage, viewer: Viewer, [X, Z]: PicturePoint): boolean {
  const { width, height } = stage.opening;
  if (Z < 0) return Z >= apronDrop(stage, viewer) - EDGE_SLACK_M;
  return Math.abs(X) <= width / 2 + EDGE_SLACK_M && Z <= height + EDGE_SLACK_M;
}
