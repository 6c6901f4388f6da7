import { between } from "@/lib/geometry/vector";
import { project } from "@/lib/perspective/project";
import type { PicturePoint } from "@/lib/stage/frame";
import { backWallCorners, type Stage } from "@/lib/stage/stage";
import type { Viewer } from "@/lib/stage/viewer";

/** How far along the line the grip is, from its left end: out of most sets. */
const GRIP = 0.93;

/** The foot of the back wall in the picture, metres, and where it is taken hold of. Null behind the eye, which no draft has. */
export function backWallFoot(stage: Stage, viewer: Viewer) {
  const [footLeft, footRight] = backWallCorners(stage);
  const [left, right] = [project(viewer, footLeft), project(viewer, footRight)];
  if (!left.seen || !right.seen) return null;
  const grip: PicturePoint = between(left.at, right.at, GRIP);
  return { from: left.at, to: right.at, grip };
}
