import type { PicturePoint, StagePoint } from "../stage/frame";
import { floorHeight, type Stage } from "../stage/stage";
import type { Viewer } from "../stage/viewer";

/** Where a stage point falls on the picture plane; `s` is the factor by which lengths there are foreshortened (1 at the plaster line). */
export type Projection =
  | { readonly seen: true; readonly at: PicturePoint; readonly s: number }
  | { readonly seen: false };

/**
 * Projects a stage point on to the picture plane y = 0 by central projection from the eye:
 * s = D / (D + y), X = ex + (x - ex) s, Z = h + (z - h) s (similar triangles; the pinhole camera of any optics text).
 * A point level with the eye or behind it (y <= -D) is not seen, nor is anything when the eye is not before the plane.
 */
export function project(viewer: Viewer, point: StagePoint): Projection {
  // Read by index: taking a tuple apart goes through its iterator, which costs a third of the time.
  const x = point[0];
  const y = point[1];
  const z = point[2];
  const { distance, eyeHeight, offset } = viewer;
  const depth = distance + y;
  if (!(distance > 0 && depth > 0)) return { seen: false };
  const drawnIn = y / depth; // 1 - s, without the loss of digits near the plane: what stands on the plane stays exactly there
  return { seen: true, at: [x + (offset - x) * drawnIn, z + (eyeHeight - z) * drawnIn], s: distance / depth };
}

export type FloorPlace = { readonly found: true; readonly at: StagePoint } | { readonly found: false };

/**
 * The place on the stage floor, or on a surface `base` metres above it, that a picture point shows: the inverse of
 * `project` on that floor. On the level floor y = D (Z - b) / (h - Z); upstage of the plaster line of a floor of rake k,
 * y = D (Z - b) / (h + k D - Z). A point on or beyond the floor's own horizon shows no place on it.
 * Of a base over the eye on a rake a picture point can show two places; the one upstage is taken.
 */
export function backProjectToFloor(
  viewer: Viewer,
  stage: Pick<Stage, "rake">,
  [X, Z]: PicturePoint,
  base = 0,
): FloorPlace {
  const { distance, eyeHeight, offset } = viewer;
  const depthOn = (rake: number) => (distance * (Z - base)) / (eyeHeight + rake * distance - Z);
  const upstage = depthOn(stage.rake);
  const before = depthOn(0);
  const y = upstage >= 0 && Number.isFinite(upstage) ? upstage : before;
  const onRake = y >= 0 && y === upstage;
  const onLevel = y < 0 && y > -distance;
  if (!(Number.isFinite(y) && (onRake || onLevel))) return { found: false };
  return { found: true, at: [X + ((X - offset) * y) / distance, y, floorHeight(stage, y) + base] };
}

/** The height over the stage floor at the plaster line that a picture point at height `Z` shows, at a depth of factor `s`: z = h + (Z - h) / s. */
export function heightShown(viewer: Pick<Viewer, "eyeHeight">, Z: number, s: number): number {
  return viewer.eyeHeight + (Z - viewer.eyeHeight) / s;
}
