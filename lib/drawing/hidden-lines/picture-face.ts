import { heightOver, type Plane, planeOf } from "../../geometry/plane";
import { project } from "../../perspective/project";
import type { Face } from "../../plan/solids/solid";
import { eyePoint, type Viewer } from "../../stage/viewer";
import { clipRing, depthOf } from "./near-plane";
import { TOUCH_M } from "./touch";

/** A face as it can hide lines: where it lies over the stage, and what it covers of the picture. */
export type PictureFace = {
  /** Its place in the list of faces. */
  readonly face: number;
  /** Its plane over the stage, positive on the eye's side. */
  readonly plane: Plane;
  /** Its corners in the picture, ring after ring: X, Z, X, Z ... */
  readonly corners: Float64Array;
  /** Where each ring ends, in corners. */
  readonly ends: readonly number[];
  /** Left, bottom, right and top of what it covers. */
  readonly box: readonly [number, number, number, number];
  /** How far upstage of the eye its nearest corner lies. */
  readonly nearest: number;
};

/**
 * A face as the eye sees it, picture metres; what lies behind the eye is cut away. Null when it hides nothing: it is behind the
 * eye, seen edge-on, or encloses nothing.
 */
export function pictureFace(viewer: Viewer, { outline, holes }: Face, face: number): PictureFace | null {
  const outer = planeOf(outline);
  if (!outer) return null;
  const eyeHeight = heightOver(outer, eyePoint(viewer));
  if (!(Math.abs(eyeHeight) > TOUCH_M)) return null;
  const rings = [outline, ...holes].map((ring) => clipRing(viewer, ring)).filter((ring) => ring.length > 2);
  const points = rings.flat();
  if (points.length === 0) return null;
  const corners = new Float64Array(2 * points.length);
  points.forEach((point, i) => {
    const seen = project(viewer, point);
    corners.set(seen.seen ? seen.at : [Number.NaN, Number.NaN], 2 * i);
  });
  if (!corners.every(Number.isFinite)) return null;
  let count = 0;
  return {
    face,
    plane: eyeHeight > 0 ? outer : turnOver(outer),
    corners,
    ends: rings.map((ring) => (count += ring.length)),
    box: boxOf(corners),
    nearest: Math.min(...points.map((point) => depthOf(viewer, point))),
  };
}

function turnOver({ normal: [x, y, z], offset }: Plane): Plane {
  return { normal: [-x, -y, -z], offset: -offset };
}

function boxOf(corners: Float64Array): PictureFace["box"] {
  let [left, bottom, right, top] = [Infinity, Infinity, -Infinity, -Infinity];
  for (let i = 0; i < corners.length; i += 2) {
    const [x, z] = [corners[i] as number, corners[i + 1] as number];
    left = Math.min(left, x);
    right = Math.max(right, x);
    bottom = Math.min(bottom, z);
    top = Math.max(top, z);
  }
  return [left, bottom, right, top];
}
