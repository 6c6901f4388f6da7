import { ShapeUtils, Vector2 } from "three";
import type { Face } from "@/lib/plan/solids/solid";
import type { StagePoint } from "@/lib/stage/frame";

/**
 * Hidden or not by casting a ray at a time, an independent way to the same answer: it shares no code with the engine. Faces are
 * cut into triangles by three.js (ShapeUtils, which clips ears), a package written elsewhere.
 */

/** Points as near as this to where the answer changes, on a face or before it, are not judged, metres. */
export const MARGIN_M = 2e-3;

/** Faces whose plane passes the eye closer than this are seen so nearly edge-on that nothing behind them is judged, metres. */
const EDGE_ON_M = 0.05;

/** What is less far upstage of the eye is not judged, metres: the engine draws nothing so near, and nothing there hides. */
export const AT_EYE_M = 0.2;

/** Nearer to a plane than this is in it, metres: rounding. */
const IN_PLANE_M = 1e-9;

/** Slack of a triangle's sides, so that no ray slips through the seam of two, square metres. */
const SEAM_M2 = 1e-9;

type Triple = readonly [number, number, number];
type Flat = readonly [number, number];

/** A face laid flat: its plane, two directions in it, and its triangles and sides in those. */
type RayFace = {
  readonly origin: Triple;
  readonly normal: Triple;
  readonly across: Triple;
  readonly up: Triple;
  readonly triangles: readonly (readonly [Flat, Flat, Flat])[];
  readonly sides: readonly (readonly [Flat, Flat])[];
};

export type Verdict = "seen" | "hidden" | "too near to call";

export function rayFace({ outline, holes }: Face): RayFace {
  const [a, b] = outline as readonly [StagePoint, StagePoint];
  const across = scaled(minus(b, a), 1 / size(minus(b, a)));
  // The corner farthest from the first side gives the plane the surest.
  const far = outline.reduce((best, p) => (offLine(p, a, across) > offLine(best, a, across) ? p : best));
  const cross = turn(across, minus(far, a));
  const normal = scaled(cross, 1 / size(cross));
  const up = turn(normal, across);
  const lay = (p: StagePoint): Flat => [times(minus(p, a), across), times(minus(p, a), up)];
  const rings = [outline, ...holes].map((ring) => ring.map(lay));
  const [contour, ...inner] = rings.map((ring) => ring.map(([u, v]) => new Vector2(u, v)));
  const corners = rings.flat();
  const triangles = ShapeUtils.triangulateShape(contour as Vector2[], inner).map(
    (three) => three.map((i) => corners[i]) as unknown as [Flat, Flat, Flat],
  );
  const sides = rings.flatMap((ring) =>
    ring.map((p, i): readonly [Flat, Flat] => [p, ring[(i + 1) % ring.length] as Flat]),
  );
  return { origin: a, normal, across, up, triangles, sides };
}

/**
 * Whether the eye sees a point past these faces. A point in the plane of a face is seen on it when what the point is the edge
 * of, given by its `corners`, stands out towards the eye; else it is not judged.
 */
export function castRay(
  eye: StagePoint,
  point: StagePoint,
  faces: readonly RayFace[],
  corners: readonly StagePoint[],
): Verdict {
  let unsure = false;
  for (const face of faces) {
    const verdict = pastOne(eye, point, face, corners);
    if (verdict === "hidden") return "hidden";
    if (verdict === "too near to call") unsure = true;
  }
  return unsure ? "too near to call" : "seen";
}

function pastOne(eye: StagePoint, point: StagePoint, face: RayFace, corners: readonly StagePoint[]): Verdict {
  const here = offPlane(face, eye);
  const there = offPlane(face, point);
  if (Math.abs(here) < IN_PLANE_M) return "seen";
  if (Math.abs(here) < EDGE_ON_M) return "too near to call";
  if (here * there > 0 && Math.abs(there) > MARGIN_M) return "seen";
  const standsOut = (corner: StagePoint) => offPlane(face, corner) * Math.sign(here) > MARGIN_M;
  if (Math.abs(there) < IN_PLANE_M && corners.some(standsOut)) return "seen";
  const share = here / (here - there);
  const hit: Triple = [
    eye[0] + (point[0] - eye[0]) * share,
    eye[1] + (point[1] - eye[1]) * share,
    eye[2] + (point[2] - eye[2]) * share,
  ];
  const within = placeOn(face, hit);
  if (within === "outside") return "seen";
  if (hit[1] - eye[1] < AT_EYE_M) return "too near to call";
  return within === "inside" && Math.abs(there) > MARGIN_M ? "hidden" : "too near to call";
}

/** Where a point of a face's plane is: on the face, off it, or too near its sides to call. */
export function placeOn(face: RayFace, point: Triple): "inside" | "outside" | "side" {
  const off = minus(point, face.origin);
  const p: Flat = [times(off, face.across), times(off, face.up)];
  if (face.sides.some((side) => gapTo(p, side) < MARGIN_M)) return "side";
  return face.triangles.some((three) => isInTriangle(p, three)) ? "inside" : "outside";
}

/** How far a point is from a face's plane, with a sign. */
export function offPlane(face: RayFace, point: Triple): number {
  return times(minus(point, face.origin), face.normal);
}

function isInTriangle(p: Flat, [a, b, c]: readonly [Flat, Flat, Flat]): boolean {
  const side = (q: Flat, r: Flat) => (r[0] - q[0]) * (p[1] - q[1]) - (r[1] - q[1]) * (p[0] - q[0]);
  const [one, two, three] = [side(a, b), side(b, c), side(c, a)];
  return Math.min(one, two, three) >= -SEAM_M2 || Math.max(one, two, three) <= SEAM_M2;
}

function gapTo(p: Flat, [a, b]: readonly [Flat, Flat]): number {
  const [u, v] = [b[0] - a[0], b[1] - a[1]];
  const share = Math.min(1, Math.max(0, ((p[0] - a[0]) * u + (p[1] - a[1]) * v) / (u * u + v * v)));
  return Math.hypot(p[0] - a[0] - u * share, p[1] - a[1] - v * share);
}

function offLine(p: StagePoint, a: StagePoint, along: Triple): number {
  return size(turn(along, minus(p, a)));
}

function minus(a: Triple, b: Triple): Triple {
  return [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
}

function times(a: Triple, b: Triple): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

function turn(a: Triple, b: Triple): Triple {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
}

function scaled(a: Triple, by: number): Triple {
  return [a[0] * by, a[1] * by, a[2] * by];
}

function size(a: Triple): number {
  return Math.hypot(...a);
}
