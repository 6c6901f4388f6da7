import type { Matrix3, Vector3 } from "./matrix3";

/** An eigenvalue of a symmetric matrix with its direction, of length 1. */
export type EigenPair = { readonly value: number; readonly vector: Vector3 };

/** Sweeps over the three entries beside the diagonal: each at least squares what is left there, so these are plenty. */
const SWEEPS = 30;

const PAIRS = [
  [0, 1],
  [0, 2],
  [1, 2],
] as const;

/**
 * Eigenvalues and directions of a symmetric 3 x 3 matrix, the smallest value first, by Jacobi's rotations (Numerical
 * methods, any text). Only symmetric matrices have the meaning; the entries below the diagonal are not looked at.
 */
export function symmetricEigen3(matrix: Matrix3): readonly [EigenPair, EigenPair, EigenPair] {
  const [[xx, xy, xz], [, yy, yz], [, , zz]] = matrix;
  const a = [
    [xx, xy, xz],
    [xy, yy, yz],
    [xz, yz, zz],
  ];
  const v = [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ];
  for (let sweep = 0; sweep < SWEEPS; sweep++) for (const [p, q] of PAIRS) rotate(a, v, p, q);
  const pair = (i: 0 | 1 | 2): EigenPair => ({ value: at(a, i, i), vector: [at(v, 0, i), at(v, 1, i), at(v, 2, i)] });
  const [first, second, third] = [pair(0), pair(1), pair(2)].sort((one, other) => one.value - other.value);
  return [first as EigenPair, second as EigenPair, third as EigenPair];
}

function at(m: readonly number[][], row: number, column: number): number {
  return (m[row] as number[])[column] as number;
}

/** Turns the plane of two axes so that their shared entry vanishes; `v` gathers the turns. */
function rotate(a: number[][], v: number[][], p: number, q: number): void {
  const off = at(a, p, q);
  if (off === 0) return;
  const theta = (at(a, q, q) - at(a, p, p)) / (2 * off);
  const t = (theta < 0 ? -1 : 1) / (Math.abs(theta) + Math.hypot(theta, 1));
  const c = 1 / Math.hypot(t, 1);
  const s = t * c;
  for (let k = 0; k < 3; k++) {
    const row = a[k] as number[];
    const [kp, kq] = [row[p] as number, row[q] as number];
    [row[p], row[q]] = [c * kp - s * kq, s * kp + c * kq];
  }
  const [rowP, rowQ] = [a[p] as number[], a[q] as number[]];
  for (let k = 0; k < 3; k++) {
    const [pk, qk] = [rowP[k] as number, rowQ[k] as number];
    [rowP[k], rowQ[k]] = [c * pk - s * qk, s * pk + c * qk];
    const turned = v[k] as number[];
    const [vp, vq] = [turned[p] as number, turned[q] as number];
    [turned[p], turned[q]] = [c * vp - s * vq, s * vp + c * vq];
  }
}
