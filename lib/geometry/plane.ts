import type { Vector3 } from "./matrix3";
import { cross3, dot3, subtract3 } from "./vector3";

/** A plane: the points p with normal . p = offset; the normal has length 1 and points to the positive side. */
export type Plane = { readonly normal: Vector3; readonly offset: number };

/** A ring whose area is below this share of its longest reach squared is a line or a point: it has no plane worth having. */
const NO_AREA = 1e-9;

/**
 * The plane of a ring of points, positive on the side from which the ring runs counter-clockwise. The normal sums the turns
 * of all the corners (Newell's method), so a corner of 180 degrees does no harm, nor does a little unevenness. Null when the
 * ring encloses nothing or a number in it is not finite.
 */
export function planeOf(ring: readonly Vector3[]): Plane | null {
  const first = ring[0];
  if (!first) return null;
  let normal: Vector3 = [0, 0, 0];
  let middle: Vector3 = [0, 0, 0];
  let reach = 0;
  ring.forEach((point, i) => {
    const a = subtract3(point, first);
    const turn = cross3(a, subtract3(ring[(i + 1) % ring.length] as Vector3, first));
    normal = [normal[0] + turn[0], normal[1] + turn[1], normal[2] + turn[2]];
    middle = [middle[0] + a[0], middle[1] + a[1], middle[2] + a[2]];
    reach = Math.max(reach, dot3(a, a));
  });
  const length = Math.hypot(...normal);
  if (!(length > NO_AREA * reach && Number.isFinite(length))) return null;
  const unit: Vector3 = [normal[0] / length, normal[1] / length, normal[2] / length];
  return { normal: unit, offset: dot3(unit, first) + dot3(unit, middle) / ring.length };
}

/** How far a point lies from a plane, positive on the side its normal points to. */
export function heightOver({ normal, offset }: Plane, point: Vector3): number {
  // Read by index, as in `project`: taking tuples apart goes through their iterators, and this is asked millions of times.
  return normal[0] * point[0] + normal[1] * point[1] + normal[2] * point[2] - offset;
}
