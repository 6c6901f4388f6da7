import type { Matrix3 } from "@/lib/geometry/matrix3";
import type { PageFit } from "@/lib/photo/page-fit";
import type { PhotoPoint } from "@/lib/photo/pixels";
import type { SheetPlace } from "@/lib/sheet/place-drawings";
import { type Curl, curledPlace, meetCurled } from "./curl";

type Vector = readonly [number, number, number];

/** A camera over a sheet: sheet millimetres right, down and away from it; its own axes the same three. */
export type Camera = {
  readonly width: number;
  readonly height: number;
  readonly focalPx: number;
  readonly k1: number;
  readonly at: Vector;
  /** Its right, its down and the way it looks. */
  readonly axes: readonly [Vector, Vector, Vector];
  readonly curl: Curl;
};

/** The axes of a camera that looks straight down, tilted towards a direction and turned about its own axis; degrees. */
export function cameraAxes(tiltDeg: number, leanDeg: number, turnDeg: number): Camera["axes"] {
  const [tilt, lean, turn] = [tiltDeg, leanDeg, turnDeg].map((deg) => (deg * Math.PI) / 180) as [
    number,
    number,
    number,
  ];
  // Rodrigues' rotation about the level axis that the camera leans over.
  const [kx, ky] = [-Math.sin(lean), Math.cos(lean)];
  const rotate = ([x, y, z]: Vector): Vector => {
    const [c, s] = [Math.cos(tilt), Math.sin(tilt)];
    const dot = (kx * x + ky * y) * (1 - c);
    return [x * c + ky * z * s + kx * dot, y * c - kx * z * s + ky * dot, z * c + (kx * y - ky * x) * s];
  };
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  return [rotate([c, s, 0]), rotate([-s, c, 0]), rotate([0, 0, 1])];
}

/** Where a place of the sheet is in the photograph. */
export function seeSheet(camera: Camera, place: SheetPlace): PhotoPoint {
  const { at, axes, curl, focalPx, width, height, k1 } = camera;
  const [x, y, z] = curledPlace(curl, place);
  const from: Vector = [x - at[0], y - at[1], z - at[2]];
  const [right, down, away] = axes.map((axis) => dot(axis, from)) as [number, number, number];
  const [u, v] = [(focalPx * right) / away, (focalPx * down) / away];
  const out = 1 + (k1 * (u * u + v * v)) / halfDiagonal(camera) ** 2;
  return [width / 2 + u * out, height / 2 + v * out];
}

/** Newton's steps to the undistorted radius: the term is small, and each doubles the digits. */
const STEPS = 5;

/** The place of the sheet, or of the table's plane beside it, that a place in the photograph shows. */
export function meetSheet(camera: Camera, [px, py]: PhotoPoint): SheetPlace {
  const { at, axes, curl, focalPx, width, height, k1 } = camera;
  const half = halfDiagonal(camera);
  const [u, v] = [(px - width / 2) / half, (py - height / 2) / half];
  const distorted = Math.hypot(u, v);
  let radius = distorted;
  for (let i = 0; i < STEPS; i++) radius -= (radius * (1 + k1 * radius ** 2) - distorted) / (1 + 3 * k1 * radius ** 2);
  const share = (distorted === 0 ? 1 : radius / distorted) * (half / focalPx);
  const [right, down, ahead] = axes;
  const ray = [0, 1, 2].map((i) => u * share * (right[i] ?? 0) + v * share * (down[i] ?? 0) + (ahead[i] ?? 0));
  return meetCurled(curl, at, ray as [number, number, number]);
}

/** The same for flat paper as the fit that a straightener has to find. */
export function trueFit(camera: Camera): PageFit {
  const { at, axes, focalPx, width, height, k1 } = camera;
  const rows = axes.map((axis): Vector => [axis[0], axis[1], -dot(axis, at)]) as unknown as Matrix3;
  const [right, down, away] = rows;
  const mixed = (row: Vector, middle: number) =>
    row.map((value, i) => focalPx * value + middle * (away[i] ?? 0)) as unknown as Vector;
  return {
    matrix: [mixed(right, width / 2), mixed(down, height / 2), away],
    k1,
    middle: [width / 2, height / 2],
    halfDiagonalPx: halfDiagonal(camera),
    residualMm: 0,
  };
}

function halfDiagonal({ width, height }: Pick<Camera, "width" | "height">): number {
  return Math.hypot(width, height) / 2;
}

function dot(a: Vector, b: Vector): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}
