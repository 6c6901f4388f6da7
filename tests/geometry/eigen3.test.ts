import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { symmetricEigen3 } from "@/lib/geometry/eigen3";
import { type Matrix3, multiply3 } from "@/lib/geometry/matrix3";
import { dot3 } from "@/lib/geometry/vector3";
import { real } from "../perspective/arbitraries";
import { seeded } from "../seeded";

describe("eigenvalues of a symmetric matrix", () => {
  // By hand: [2 1; 1 2] has 1 along (1, -1) and 3 along (1, 1).
  it.each([
    {
      matrix: [
        [2, 1, 0],
        [1, 2, 0],
        [0, 0, 5],
      ],
      values: [1, 3, 5],
    },
    {
      matrix: [
        [3, 0, 0],
        [0, -2, 0],
        [0, 0, 0],
      ],
      values: [-2, 0, 3],
    },
    {
      matrix: [
        [1, 1, 1],
        [1, 1, 1],
        [1, 1, 1],
      ],
      values: [0, 0, 3],
    },
  ] as const)("are $values, the smallest first", ({ matrix, values }) => {
    const found = symmetricEigen3(matrix).map(({ value }) => value);
    for (const [i, value] of values.entries()) expect(found[i]).toBeCloseTo(value, 12);
  });

  it("come with directions of length 1, square to each other, that the matrix only stretches", () => {
    const entry = real(-10, 10);
    fc.assert(
      fc.property(fc.tuple(entry, entry, entry, entry, entry, entry), ([xx, xy, xz, yy, yz, zz]) => {
        const matrix: Matrix3 = [
          [xx, xy, xz],
          [xy, yy, yz],
          [xz, yz, zz],
        ];
        const pairs = symmetricEigen3(matrix);
        for (const { value, vector } of pairs) {
          const image = multiply3(matrix, vector);
          for (const [i, v] of vector.entries()) expect(image[i]).toBeCloseTo(value * v, 9);
          expect(dot3(vector, vector)).toBeCloseTo(1, 12);
        }
        expect(dot3(pairs[0].vector, pairs[1].vector)).toBeCloseTo(0, 12);
        expect(pairs[0].value).toBeLessThanOrEqual(pairs[1].value);
        expect(pairs[1].value).toBeLessThanOrEqual(pairs[2].value);
      }),
      seeded,
    );
  });
});
