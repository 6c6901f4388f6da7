import { project } from "../../perspective/project";
import type { PicturePoint, StagePoint } from "../../stage/frame";
import type { Viewer } from "../../stage/viewer";
import { clipLine, depthOf } from "./near-plane";
import { SPECK_M } from "./touch";

/** The piece of a line that lies before the eye, over the stage and in the picture. */
export type PictureLine = {
  readonly from: StagePoint;
  readonly to: StagePoint;
  /** Its ends in the picture. */
  readonly start: PicturePoint;
  readonly end: PicturePoint;
  /** Its length in the picture, and the direction from start to end, of length 1. */
  readonly length: number;
  readonly direction: readonly [number, number];
  /** How far upstage of the eye its ends lie. */
  readonly depths: readonly [number, number];
};

/** A line as the eye sees it, metres. Null when it shows as no more than a point, or lies behind the eye. */
export function pictureLine(
  viewer: Viewer,
  line: { readonly from: StagePoint; readonly to: StagePoint },
): PictureLine | null {
  const clipped = clipLine(viewer, line.from, line.to);
  if (!clipped) return null;
  const { from, to } = clipped;
  const [a, b] = [project(viewer, from), project(viewer, to)];
  if (!(a.seen && b.seen)) return null;
  const [x, z] = [b.at[0] - a.at[0], b.at[1] - a.at[1]];
  const length = Math.hypot(x, z);
  if (!(length > SPECK_M)) return null;
  return {
    from,
    to,
    start: a.at,
    end: b.at,
    length,
    direction: [x / length, z / length],
    depths: [depthOf(viewer, from), depthOf(viewer, to)],
  };
}
