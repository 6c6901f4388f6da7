import type { PicturePoint, StageDirection } from "../stage/frame";
import type { Viewer } from "../stage/viewer";

/** Sine of the angle to the picture plane under which a line counts as parallel to it. */
const PARALLEL_SINE = 1e-9;

/**
 * Where all lines of one direction appear to meet: the picture point of the ray from the eye in that direction,
 * (ex + D dx/dy, h + D dz/dy). Null for a direction parallel to the picture plane.
 */
export function vanishingPoint(viewer: Viewer, [dx, dy, dz]: StageDirection): PicturePoint | null {
  if (!(Math.abs(dy) > PARALLEL_SINE * Math.hypot(dx, dy, dz))) return null;
  return [viewer.offset + (viewer.distance * dx) / dy, viewer.eyeHeight + (viewer.distance * dz) / dy];
}

/** Where lines square to the plaster line vanish: straight before the eye. */
export function centreVanishingPoint(viewer: Viewer): PicturePoint {
  return [viewer.offset, viewer.eyeHeight];
}

/** Where the rays of the floor (lines square to the plaster line) vanish: above the CVP on a rake, by `rake` times D. */
export function floorVanishingPoint(viewer: Viewer, stage: { readonly rake: number }): PicturePoint {
  return [viewer.offset, viewer.eyeHeight + stage.rake * viewer.distance];
}

/** The distance points, left then right: where level lines at 45 degrees to the plaster line vanish. */
export function distancePoints(viewer: Viewer): readonly [PicturePoint, PicturePoint] {
  return [
    [viewer.offset - viewer.distance, viewer.eyeHeight],
    [viewer.offset + viewer.distance, viewer.eyeHeight],
  ];
}

/**
 * The measuring point of level lines that vanish at `vanishing`: on the horizon, as far from it as the eye is, on the
 * side of the CVP; for lines square to the plaster line the distance point at the viewer's left.
 */
export function measuringPoint(viewer: Viewer, vanishing: PicturePoint): PicturePoint {
  const across = vanishing[0] - viewer.offset;
  const reach = Math.hypot(across, viewer.distance);
  return [vanishing[0] + (across < 0 ? reach : -reach), viewer.eyeHeight];
}
