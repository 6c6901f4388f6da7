import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Vector3 } from "@/lib/geometry/matrix3";
import { heightOver, planeOf } from "@/lib/geometry/plane";
import { between3, cross3, dot3, subtract3 } from "@/lib/geometry/vector3";
import { seeded } from "../seeded";

/** Rounding left in products of numbers up to ten. */
const ROUNDING = 1e-12;

describe("vectors in space", () => {
  it.each<[Vector3, Vector3, Vector3, number]>([
    [[1, 0, 0], [0, 1, 0], [0, 0, 1], 0],
    [[0, 1, 0], [0, 0, 1], [1, 0, 0], 0],
    [[1, 2, 3], [4, 5, 6], [-3, 6, -3], 32],
    [[2, 4, 6], [1, 2, 3], [0, 0, 0], 28],
  ])("%j and %j: square to both is %j, the product %d", (a, b, square, product) => {
    expect(cross3(a, b)).toEqual(square);
    expect(dot3(a, b)).toBe(product);
  });

  it("goes part of the way, and beyond", () => {
    expect(between3([1, 2, 3], [3, 2, -1], 0.5)).toEqual([2, 2, 1]);
    expect(between3([1, 2, 3], [3, 2, -1], 2)).toEqual([5, 2, -5]);
    expect(subtract3([1, 2, 3], [3, 2, -1])).toEqual([-2, 0, 4]);
  });
});

describe("the plane of a ring", () => {
  it("of a square on the floor, counter-clockwise from above, looks up", () => {
    const plane = planeOf([
      [0, 0, 1],
      [2, 0, 1],
      [2, 2, 1],
      [0, 2, 1],
    ]);
    expect(plane).toEqual({ normal: [0, 0, 1], offset: 1 });
    expect(plane && heightOver(plane, [7, -3, 1.5])).toBe(0.5);
  });

  it("of an L with a straight corner looks the same way as the square round it", () => {
    const plane = planeOf([
      [0, 0, 0],
      [0, 0, 1],
      [0, 0, 2],
      [0, 1, 2],
      [0, 1, 1],
      [0, 2, 1],
      [0, 2, 0],
    ]);
    expect(plane?.normal).toEqual([-1, 0, 0]);
  });

  it.each<[string, Vector3[]]>([
    ["of nothing", []],
    ["of a point", [[1, 2, 3]]],
    [
      "of a line",
      [
        [0, 0, 0],
        [1, 1, 1],
        [2, 2, 2],
      ],
    ],
    [
      "with a number that is none",
      [
        [0, 0, 0],
        [1, Number.NaN, 0],
        [0, 1, 0],
      ],
    ],
  ])("%s is none", (_, ring) => {
    expect(planeOf(ring)).toBeNull();
  });

  it("holds the corners of any triangle, and turns over with it", () => {
    const anyNumber = fc.double({ min: -10, max: 10, noNaN: true });
    const anyPoint = fc.tuple(anyNumber, anyNumber, anyNumber);
    fc.assert(
      fc.property(anyPoint, anyPoint, anyPoint, (a, b, c) => {
        const plane = planeOf([a, b, c]);
        fc.pre(plane !== null && Math.hypot(...cross3(subtract3(b, a), subtract3(c, a))) > 1e-2);
        for (const p of [a, b, c]) expect(Math.abs(heightOver(plane, p))).toBeLessThan(1e2 * ROUNDING);
        const turned = planeOf([c, b, a]);
        expect(dot3(plane.normal, turned?.normal ?? [0, 0, 0])).toBeCloseTo(-1, 9);
      }),
      seeded,
    );
  });
});
