import { between3 } from "../../geometry/vector3";
import type { StagePoint } from "../../stage/frame";
import type { Viewer } from "../../stage/viewer";

/**
 * What is nearer to the eye than this, measured upstage, is not drawn, metres. Nobody sits with the nose in the set; and the
 * picture of what is left stays within the distance over this, a hundred or so times life, where a double has digits to spare.
 */
export const NEAR_M = 0.1;

type Clipped = { readonly from: StagePoint; readonly to: StagePoint };

/** How far upstage of the eye a point lies, metres. */
export function depthOf(viewer: Pick<Viewer, "distance">, [, y]: StagePoint): number {
  return viewer.distance + y;
}

/** The piece of a line that lies before the eye; null when there is none, or when a number in it is not finite. */
export function clipLine(viewer: Viewer, from: StagePoint, to: StagePoint): Clipped | null {
  if (![...from, ...to].every(Number.isFinite)) return null;
  const [a, b] = [depthOf(viewer, from), depthOf(viewer, to)];
  if (a >= NEAR_M && b >= NEAR_M) return { from, to };
  if (a < NEAR_M && b < NEAR_M) return null;
  const cut = between3(from, to, (NEAR_M - a) / (b - a));
  return a < b ? { from: cut, to } : { from, to: cut };
}

/**
 * The part of a ring that lies before the eye (Sutherland and Hodgman's clipping, against one plane). A ring that is cut into
 * several stays one, joined by lines there and back along the cut; counting crossings, even or odd, they come to nothing.
 */
export function clipRing(viewer: Viewer, ring: readonly StagePoint[]): readonly StagePoint[] {
  if (ring.every((point) => depthOf(viewer, point) >= NEAR_M)) return ring;
  return ring.flatMap((point, i) => {
    const before = ring.at(i - 1) as StagePoint;
    const [a, b] = [depthOf(viewer, before), depthOf(viewer, point)];
    const cut = a < NEAR_M === b < NEAR_M ? [] : [between3(before, point, (NEAR_M - a) / (b - a))];
    return b < NEAR_M ? cut : [...cut, point];
  });
}
