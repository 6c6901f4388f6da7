import type { Matrix3 } from "../../geometry/matrix3";
import { solveLinear } from "./solve-linear";

/** A place on the paper and where it was seen, both in units of about one. */
export type SeenPair = { readonly x: number; readonly y: number; readonly u: number; readonly v: number };

/** A homography by rows, its last entry 1, and the distortion: the photograph has (u, v) at (u, v) (1 + k1 (u^2 + v^2)). */
export type LensFit = { readonly matrix: Matrix3; readonly k1: number };

/**
 * How large k1 is expected to be: telephones correct their pictures to a few hundredths at the corner (from memory). It steadies k1
 * where the places seen say little of it, and is of no weight where they do.
 */
const K1_EXPECTED = 0.05;
/** How near places are seen, half diagonals of the photograph: about a tenth of a pixel. */
const SEEN_EXPECTED = 5e-5;
/** A lens bent more than this makes no photograph of a sheet. */
const K1_MOST = 0.3;
const STEPS = 30;
/** A step under this moves no place by a thousandth of a pixel. */
const SETTLED = 1e-8;

/** The homography that meets four places or more, least squares on its linear equations; null where they do not say enough. */
export function fitHomography(pairs: readonly SeenPair[]): Matrix3 | null {
  const normal = makeNormal(8);
  for (const { x, y, u, v } of pairs) {
    addEquation(normal, [x, y, 1, 0, 0, 0, -u * x, -u * y], u, 1);
    addEquation(normal, [0, 0, 0, x, y, 1, -v * x, -v * y], v, 1);
  }
  const h = solveLinear(normal.matrix, normal.right);
  return h && toMatrix(h);
}

/** Homography and k1 together, least squares in the photograph by Gauss and Newton's method; null where it comes to no end. */
export function fitLens(pairs: readonly SeenPair[]): LensFit | null {
  const start = fitHomography(pairs);
  if (!start) return null;
  let p: readonly number[] = [...start.flat().slice(0, 8), 0];
  const prior = (SEEN_EXPECTED / K1_EXPECTED) ** 2;
  for (let i = 0; i < STEPS; i++) {
    const normal = makeNormal(9);
    const k1 = p[8] as number;
    for (const { x, y, u: seenU, v: seenV } of pairs) {
      const [u, v, w] = project(p, x, y);
      const square = u * u + v * v;
      const d = 1 + k1 * square;
      const [ux, vx] = [
        [x / w, y / w, 1 / w, 0, 0, 0, (-u * x) / w, (-u * y) / w],
        [0, 0, 0, x / w, y / w, 1 / w, (-v * x) / w, (-v * y) / w],
      ] as const;
      const radial = ux.map((each, n) => 2 * k1 * (u * each + v * (vx[n] as number)));
      addEquation(normal, [...ux.map((each, n) => d * each + u * (radial[n] as number)), u * square], seenU - u * d, 1);
      addEquation(normal, [...vx.map((each, n) => d * each + v * (radial[n] as number)), v * square], seenV - v * d, 1);
    }
    addEquation(normal, [0, 0, 0, 0, 0, 0, 0, 0, 1], -k1, prior);
    const step = solveLinear(normal.matrix, normal.right);
    if (!step) return null;
    p = p.map((each, n) => each + (step[n] as number));
    if (!(Math.abs(p[8] as number) < K1_MOST)) return null;
    if (Math.max(...step.map(Math.abs)) < SETTLED) return { matrix: toMatrix(p), k1: p[8] as number };
  }
  return null;
}

function project(p: readonly number[], x: number, y: number): readonly [number, number, number] {
  const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0, g = 0, h = 0] = p;
  const w = g * x + h * y + 1;
  return [(a * x + b * y + c) / w, (d * x + e * y + f) / w, w];
}

type Normal = { readonly matrix: number[][]; readonly right: number[] };

function makeNormal(n: number): Normal {
  return { matrix: Array.from({ length: n }, () => new Array<number>(n).fill(0)), right: new Array<number>(n).fill(0) };
}

function addEquation({ matrix, right }: Normal, row: readonly number[], value: number, weight: number): void {
  for (const [i, a] of row.entries()) {
    const line = matrix[i] as number[];
    for (const [j, b] of row.entries()) line[j] = (line[j] as number) + weight * a * b;
    right[i] = (right[i] as number) + weight * a * value;
  }
}

function toMatrix([a = 0, b = 0, c = 0, d = 0, e = 0, f = 0, g = 0, h = 0]: readonly number[]): Matrix3 {
  return [
    [a, b, c],
    [d, e, f],
    [g, h, 1],
  ];
}
