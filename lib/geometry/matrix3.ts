export type Vector3 = readonly [number, number, number];
export type Matrix3 = readonly [Vector3, Vector3, Vector3];

/** A pivot below this share of the largest entry means that the matrix has no inverse worth having. */
const SINGULAR = 1e-14;

/** The inverse of a 3 x 3 matrix by its cofactors, or null when it is singular. */
export function invert3([[a, b, c], [d, e, f], [g, h, i]]: Matrix3): Matrix3 | null {
  const [A, B, C] = [e * i - f * h, f * g - d * i, d * h - e * g];
  const determinant = a * A + b * B + c * C;
  const size = Math.max(
    Math.abs(a),
    Math.abs(b),
    Math.abs(c),
    Math.abs(d),
    Math.abs(e),
    Math.abs(f),
    Math.abs(g),
    Math.abs(h),
    Math.abs(i),
  );
  if (!(Math.abs(determinant) > SINGULAR * size ** 3)) return null;
  const n = 1 / determinant;
  return [
    [A * n, (c * h - b * i) * n, (b * f - c * e) * n],
    [B * n, (a * i - c * g) * n, (c * d - a * f) * n],
    [C * n, (b * g - a * h) * n, (a * e - b * d) * n],
  ];
}

export function multiply3(matrix: Matrix3, [x, y, z]: Vector3): Vector3 {
  const row = ([a, b, c]: Vector3) => a * x + b * y + c * z;
  return [row(matrix[0]), row(matrix[1]), row(matrix[2])];
}
