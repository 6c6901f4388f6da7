import Flatbush from "flatbush";
import { intersect } from "../../geometry/intervals";
import type { Vector3 } from "../../geometry/matrix3";
import { heightOver, type Plane, planeOf } from "../../geometry/plane";
import { cross3, dot3 } from "../../geometry/vector3";
import type { Face } from "../../plan/solids/solid";
import type { StagePoint } from "../../stage/frame";
import { crossingStretches } from "./crossing-stretches";
import { TOUCH_M } from "./touch";
import type { SceneLine } from "./visible-lines";

/** Planes under an angle of a smaller sine than this count as parallel: faces metres across then part by less than `TOUCH_M`. */
const PARALLEL_SINE = 1e-5;

type FlatFace = {
  readonly face: number;
  readonly plane: Plane;
  readonly points: readonly StagePoint[];
  readonly ends: readonly number[];
  readonly least: Vector3;
  readonly most: Vector3;
};

/**
 * The lines in which faces pass through one another, metres over the stage, each naming its two faces: as where a platform
 * goes into a raking wall. Faces that only touch, along an edge, by a butted end or in one plane, give none: their own edges
 * are drawn there. Ids are `first~second`, the faces' ids, with a number after it where a pair meets in several pieces.
 */
export function intersectionLines(faces: readonly Face[]): readonly SceneLine[] {
  const flat = faces.flatMap((face, i) => flatFace(face, i) ?? []);
  if (flat.length === 0) return [];
  const tree = new Flatbush(flat.length);
  for (const { least, most } of flat) tree.add(least[0], least[1], most[0], most[1]);
  tree.finish();
  return flat.flatMap((one, i) => {
    const { least, most } = one;
    const near = tree.search(least[0], least[1], most[0], most[1], (j) => {
      const other = flat[j] as FlatFace;
      return j > i && other.least[2] <= most[2] && least[2] <= other.most[2];
    });
    return near.sort((a, b) => a - b).flatMap((j) => piercingLines(faces, one, flat[j] as FlatFace));
  });
}

function piercingLines(faces: readonly Face[], one: FlatFace, other: FlatFace): readonly SceneLine[] {
  const along = cross3(one.plane.normal, other.plane.normal);
  const sine = Math.hypot(...along);
  if (!(sine > PARALLEL_SINE)) return [];
  const direction: Vector3 = [along[0] / sine, along[1] / sine, along[2] / sine];
  const through = intersect(stretchesIn(one, other.plane, direction), stretchesIn(other, one.plane, direction));
  const foot = pointOnBoth(one.plane, other.plane, along);
  const pieces = through.filter(([from, to]) => to - from > TOUCH_M);
  const id = `${faces[one.face]?.id}~${faces[other.face]?.id}`;
  return pieces.map(([from, to], i) => ({
    id: pieces.length > 1 ? `${id}.${i + 1}` : id,
    from: step(foot, direction, from),
    to: step(foot, direction, to),
    faces: [one.face, other.face],
  }));
}

/** Where the line of two planes runs strictly inside a face on one of them, in metres from the line's point nearest to the origin. */
function stretchesIn({ points, ends }: FlatFace, plane: Plane, direction: Vector3) {
  const along = points.map((point) => dot3(point, direction));
  const beside = points.map((point) => heightOver(plane, point));
  return crossingStretches({ along, beside, ends }, TOUCH_M).strict;
}

/** The point of the line of two planes that is nearest to the origin: (d1 (n2 x u) + d2 (u x n1)) / u.u with u = n1 x n2 (Cramer's rule). */
function pointOnBoth(one: Plane, other: Plane, along: Vector3): Vector3 {
  const a = cross3(other.normal, along);
  const b = cross3(along, one.normal);
  const square = dot3(along, along);
  const at = (i: 0 | 1 | 2) => (one.offset * a[i] + other.offset * b[i]) / square;
  return [at(0), at(1), at(2)];
}

function step([x, y, z]: Vector3, [u, v, w]: Vector3, by: number): StagePoint {
  return [x + u * by, y + v * by, z + w * by];
}

function flatFace({ outline, holes }: Face, face: number): FlatFace | null {
  const plane = planeOf(outline);
  const points = [outline, ...holes].flat();
  if (!(plane && points.flat().every(Number.isFinite))) return null;
  let count = 0;
  const ends = [outline, ...holes].map((ring) => (count += ring.length));
  const reach = (pick: (...values: number[]) => number): Vector3 => [
    pick(...points.map((p) => p[0])),
    pick(...points.map((p) => p[1])),
    pick(...points.map((p) => p[2])),
  ];
  return { face, plane, points, ends, least: reach(Math.min), most: reach(Math.max) };
}
