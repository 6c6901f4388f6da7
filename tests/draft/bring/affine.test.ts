import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Affine, applyAffine, chainAffine, invertAffine } from "@/lib/draft/bring/affine";
import { seeded } from "../../seeded";

const number = fc.double({ min: -100, max: 100, noNaN: true });

describe("the way back of a map", () => {
  it("leads back to where one was", () => {
    fc.assert(
      fc.property(fc.tuple(number, number, number, number, number, number), number, number, (map, x, y) => {
        const [a, b, c, d] = map;
        fc.pre(Math.abs(a * d - b * c) > 1);
        const back = invertAffine(map as Affine) as Affine;
        const [backX, backY] = applyAffine(chainAffine(back, map as Affine), [x, y]);
        expect(backX).toBeCloseTo(x, 5);
        expect(backY).toBeCloseTo(y, 5);
      }),
      seeded,
    );
  });

  it("is none where the map lays the plane on a line", () => {
    expect(invertAffine([1, 2, 2, 4, 0, 0])).toBeNull();
    expect(invertAffine([0, 0, 0, 0, 5, 5])).toBeNull();
  });
});
