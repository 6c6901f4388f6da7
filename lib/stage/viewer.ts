import type { StagePoint } from "./frame";

/** The viewer's one eye. Metres. */
export type Viewer = {
  /** From the plaster line downstage to the eye. */
  readonly distance: number;
  /** Height of the eye, and so of the horizon, above the stage floor at the plaster line. */
  readonly eyeHeight: number;
  /** Sideways from the centre line, positive to the viewer's right. */
  readonly offset: number;
};

/** Where the eye stands. */
export function eyePoint(viewer: Viewer): StagePoint {
  return [viewer.offset, -viewer.distance, viewer.eyeHeight];
}

/**
 * Distance of the eye that shows the foot of the back wall `rise` above the plaster line's foot, metres:
 * D = depth (h - r) / (r - rake depth), from similar triangles.
 * Null unless rake depth < r < h: no eye sees it so.
 */
export function distanceForBackWallRise(
  stage: { readonly depth: number; readonly rake: number },
  eyeHeight: number,
  rise: number,
): number | null {
  const footHeight = stage.rake * stage.depth;
  if (!(footHeight < rise && rise < eyeHeight)) return null;
  return (stage.depth * (eyeHeight - rise)) / (rise - footHeight);
}
