import type { Vector3 } from "../../geometry/matrix3";
import type { StagePoint } from "../../stage/frame";
import type { OpeningRim, RimPoint } from "./opening-rim";
import type { FaceSketch } from "./solid-of-faces";
import type { WallSpace } from "./wall-space";

/** Which face of the wall: how far offstage it stands, and where it begins and ends along the wall. */
export type FaceReach = { readonly v: number; readonly from: number; readonly to: number };

/**
 * One face of a wall with its openings cut out. Openings on the floor notch it from below, those up to its top from above,
 * and one that is both parts it in two. Openings are held inside the face's reach.
 */
export function wallFaces(
  id: string,
  space: WallSpace,
  { v, from, to }: FaceReach,
  rims: readonly OpeningRim[],
  outer: Vector3,
): readonly FaceSketch[] {
  const hold = (u: number) => Math.min(Math.max(u, from), to);
  const at = ([u, z]: RimPoint) => space.at(hold(u), v, z);
  const through = rims.filter(({ open, sill }) => open && sill === null);
  const bounds = [from, ...through.flatMap(({ start, end }) => [hold(start), hold(end)]), to];
  const pieces = bounds.flatMap((start, i) => (i % 2 === 0 ? [[start, bounds[i + 1] as number] as const] : []));
  return pieces.flatMap(([start, end], i) => {
    const inside = rims.filter((rim) => !(rim.open && rim.sill === null) && rim.end > start && rim.start < end);
    const outline = [...below(start, end, inside), ...above(start, end, inside)];
    const holes = inside.filter(({ open, sill }) => !open && sill !== null).map(({ points }) => points.map(at));
    const name = pieces.length > 1 ? `${id}.${i + 1}` : id;
    return end > start ? [{ id: name, element: space.wall.id, kind: "wall" as const, outline, holes, outer }] : [];
  });

  function below(start: number, end: number, inside: readonly OpeningRim[]): readonly StagePoint[] {
    const path: StagePoint[] = [];
    let reached = start;
    for (const rim of inside.filter(({ sill }) => sill === null)) {
      path.push(...space.footPath([reached, v], [hold(rim.start), v]), ...rim.points.map(at));
      reached = hold(rim.end);
    }
    return [...path, ...space.footPath([reached, v], [end, v])];
  }

  function above(start: number, end: number, inside: readonly OpeningRim[]): readonly StagePoint[] {
    const notches = inside.filter(({ open, sill }) => open && sill !== null);
    const path = [...notches].reverse().flatMap(({ points }) => [...points].reverse().map(at));
    return [space.at(end, v, space.top), ...path, space.at(start, v, space.top)];
  }
}
