import Flatbush from "flatbush";
import { heightOver } from "../../geometry/plane";
import type { Face } from "../../plan/solids/solid";
import type { PicturePoint, StagePoint } from "../../stage/frame";
import { eyePoint, type Viewer } from "../../stage/viewer";
import { type PictureFace, pictureFace } from "../hidden-lines/picture-face";

export type Gaze = {
  readonly faces: readonly PictureFace[];
  /** How far upstage of the eye the nearest surface at a picture point lies, metres; infinity where there is none. */
  readonly depthAt: (at: PicturePoint) => number;
};

/** The faces as the eye sees them, and how deep one looks at any point of the picture before a face or the floor ends it. */
export function lookThrough(
  faces: readonly Face[],
  viewer: Viewer,
  stage: { readonly rake: number; readonly depth: number },
): Gaze {
  const seen = faces.flatMap((face, i) => pictureFace(viewer, face, i) ?? []);
  const tree = seen.length > 0 ? new Flatbush(seen.length) : null;
  if (tree) {
    for (const { box } of seen) tree.add(...box);
    tree.finish();
  }
  const eye = eyePoint(viewer);
  const depthAt = (at: PicturePoint): number => {
    const [X, Z] = at;
    let nearest = Math.min(floorDepth(viewer, stage.rake, Z), viewer.distance + stage.depth);
    for (const i of tree?.search(X, Z, X, Z) ?? []) {
      const face = seen[i] as PictureFace;
      if (face.nearest >= nearest || !covers(face, at)) continue;
      nearest = Math.min(nearest, facePoint(viewer, eye, face, at)[1] + viewer.distance);
    }
    return nearest;
  };
  return { faces: seen, depthAt };
}

/** The point of a face's plane that shows at a picture point; the plane is not edge-on to the eye. */
export function facePoint(viewer: Viewer, eye: StagePoint, { plane }: PictureFace, [X, Z]: PicturePoint): StagePoint {
  const here = heightOver(plane, eye);
  const t = here / (here - heightOver(plane, [X, 0, Z]));
  return [eye[0] + (X - eye[0]) * t, -viewer.distance + viewer.distance * t, eye[2] + (Z - eye[2]) * t];
}

function floorDepth({ distance, eyeHeight }: Viewer, rake: number, Z: number): number {
  if (Z < 0) return (distance * eyeHeight) / (eyeHeight - Z);
  const below = eyeHeight + rake * distance - Z;
  return below > 0 ? distance + (distance * Z) / below : Number.POSITIVE_INFINITY;
}

function covers({ corners, ends }: PictureFace, [X, Z]: PicturePoint): boolean {
  let inside = false;
  let start = 0;
  for (const end of ends) {
    for (let i = start, last = end - 1; i < end; last = i++) {
      const [ax, az] = [corners[2 * last] as number, corners[2 * last + 1] as number];
      const [bx, bz] = [corners[2 * i] as number, corners[2 * i + 1] as number];
      if (az > Z !== bz > Z && X < ax + ((Z - az) / (bz - az)) * (bx - ax)) inside = !inside;
    }
    start = end;
  }
  return inside;
}
