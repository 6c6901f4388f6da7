import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Line, meet } from "@/lib/geometry/meet";
import { between, distance, leftOf, unit, type Vector2 } from "@/lib/geometry/vector";
import { real } from "../perspective/arbitraries";
import { seeded } from "../seeded";

describe("meet", () => {
  it.each<{ what: string; one: Line; other: Line; at: Vector2 | null }>([
    {
      what: "a cross",
      one: [
        [-1, 0],
        [1, 0],
      ],
      other: [
        [0, -1],
        [0, 1],
      ],
      at: [0, 0],
    },
    {
      what: "beyond the points that give them",
      one: [
        [0, 0],
        [1, 1],
      ],
      other: [
        [10, 0],
        [10, 1],
      ],
      at: [10, 10],
    },
    {
      what: "in a shared point",
      one: [
        [2, 3],
        [5, 5],
      ],
      other: [
        [2, 3],
        [0, 9],
      ],
      at: [2, 3],
    },
    {
      what: "parallel",
      one: [
        [0, 0],
        [1, 2],
      ],
      other: [
        [1, 0],
        [2, 2],
      ],
      at: null,
    },
    {
      what: "the same line",
      one: [
        [0, 0],
        [1, 2],
      ],
      other: [
        [2, 4],
        [3, 6],
      ],
      at: null,
    },
    {
      what: "one of no direction",
      one: [
        [1, 1],
        [1, 1],
      ],
      other: [
        [0, 0],
        [5, 0],
      ],
      at: null,
    },
  ])("$what", ({ one, other, at }) => {
    expect(meet(one, other)).toEqual(at);
  });

  it("finds the point two lines were drawn through, whichever way they are named", () => {
    const place = fc.tuple(real(-20, 20), real(-20, 20));
    fc.assert(
      fc.property(place, real(0, 7), real(0.05, 3), real(1, 30), (through, turn, apart, length) => {
        const ray = (angle: number): Vector2 => [
          through[0] + length * Math.cos(angle),
          through[1] + length * Math.sin(angle),
        ];
        const [a, b] = [ray(turn), ray(turn + apart)];
        const [behindA, behindB] = [between(through, a, -0.4), between(through, b, -0.7)];
        const allowed = (1e-13 * (60 + length)) / Math.sin(apart);
        for (const found of [meet([a, behindA], [b, behindB]), meet([behindB, b], [a, behindA])])
          expect(distance(found ?? [Number.NaN, Number.NaN], through)).toBeLessThanOrEqual(allowed);
      }),
      seeded,
    );
  });
});

describe("unit and leftOf", () => {
  it("left is to the left, square and as long", () => {
    fc.assert(
      fc.property(fc.tuple(real(-9, 9), real(-9, 9)), ([x, y]) => {
        fc.pre(Math.hypot(x, y) > 1e-6);
        const along = unit([x, y]) ?? [Number.NaN, Number.NaN];
        const left = leftOf(along);
        expect(Math.hypot(...along)).toBeCloseTo(1, 12);
        expect(along[0] * left[0] + along[1] * left[1]).toBeCloseTo(0, 12);
        expect(along[0] * left[1] - along[1] * left[0]).toBeCloseTo(1, 12);
      }),
      seeded,
    );
  });

  it("a vector of no length, or of no finite one, has no direction", () => {
    expect(unit([0, 0])).toBeNull();
    expect(unit([Number.POSITIVE_INFINITY, 0])).toBeNull();
    expect(unit([Number.NaN, 1])).toBeNull();
  });
});
