import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { invert3, type Matrix3, multiply3, type Vector3 } from "@/lib/geometry/matrix3";
import { real } from "../perspective/arbitraries";
import { seeded } from "../seeded";

const row = fc.tuple(real(-5, 5), real(-5, 5), real(-5, 5));

describe("invert3", () => {
  it("gives back the vector that was multiplied", () => {
    fc.assert(
      fc.property(row, row, row, row, (a, b, c, vector) => {
        // Weighted on the diagonal, so that every one of them has an inverse.
        const matrix: Matrix3 = [
          [a[0] + 20, a[1], a[2]],
          [b[0], b[1] + 20, b[2]],
          [c[0], c[1], c[2] + 20],
        ];
        const inverse = invert3(matrix);
        if (!inverse) throw new Error("The matrix has no inverse.");
        const back = multiply3(inverse, multiply3(matrix, vector));
        for (const i of [0, 1, 2] as const) expect(back[i]).toBeCloseTo(vector[i], 11);
      }),
      seeded,
    );
  });

  it.each<{ what: string; matrix: Matrix3 }>([
    {
      what: "nothing",
      matrix: [
        [0, 0, 0],
        [0, 0, 0],
        [0, 0, 0],
      ],
    },
    {
      what: "two rows the same",
      matrix: [
        [1, 2, 3],
        [1, 2, 3],
        [0, 1, 0],
      ],
    },
    {
      what: "a row that is the sum of the others",
      matrix: [
        [1, 2, 3],
        [4, 5, 6],
        [5, 7, 9],
      ],
    },
    {
      what: "a row that is that sum but for a rounding",
      matrix: [
        [1, 2, 3],
        [4, 5, 6],
        [5, 7, 9.000000000000002],
      ],
    },
    {
      what: "no number",
      matrix: [
        [Number.NaN, 0, 0],
        [0, 1, 0],
        [0, 0, 1],
      ],
    },
  ])("$what has no inverse", ({ matrix }) => {
    expect(invert3(matrix)).toBeNull();
  });

  it("multiplies row by row", () => {
    const vector: Vector3 = [1, 10, 100];
    expect(
      multiply3(
        [
          [1, 2, 3],
          [4, 5, 6],
          [7, 8, 9],
        ],
        vector,
      ),
    ).toEqual([321, 654, 987]);
  });
});
