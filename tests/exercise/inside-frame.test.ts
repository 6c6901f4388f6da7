import { describe, expect, it } from "vitest";
import { apronDrop, crossesFrame, insideFrame } from "@/lib/exercise/inside-frame";
import type { PicturePoint } from "@/lib/stage/frame";

const STAGE = { opening: { width: 10, height: 6 }, depth: 8, apron: 2, rake: 0 };
const EYE = { distance: 10, eyeHeight: 2.4, offset: 0 };

describe("apronDrop", () => {
  it("is how far the edge of the apron falls below the plaster line", () => {
    // Z = h (1 - D / (D + y)) = 2.4 (1 - 10/8)
    expect(apronDrop(STAGE, EYE)).toBeCloseTo(-0.6, 12);
    expect(apronDrop({ ...STAGE, apron: 0 }, EYE)).toBeCloseTo(0, 12);
    expect(apronDrop({ ...STAGE, apron: 12 }, EYE)).toBe(0);
  });
});

describe("insideFrame", () => {
  it.each([
    ["the middle", [0, 3], true],
    ["a corner of the opening", [5, 6], true],
    ["beside the opening", [5.01, 3], false],
    ["above it", [0, 6.01], false],
    ["on the apron", [0, -0.5], true],
    ["at the edge of the apron", [0, -0.6], true],
    ["in the house", [0, -0.7], false],
  ] as const)("of %s", (_, at, inside) => {
    expect(insideFrame(STAGE, EYE, at)).toBe(inside);
  });
});

describe("crossesFrame", () => {
  const lines: readonly (readonly [string, PicturePoint, PicturePoint, boolean])[] = [
    ["straight across", [-8, 3], [8, 3], true],
    ["straight up", [0, -3], [0, 9], true],
    ["across a corner", [4, 8], [8, 4], false],
    ["through a corner", [4, 6.5], [6, 5.5], true],
    ["inside", [-1, 1], [1, 2], true],
    ["along the edge", [5, -1], [5, 7], true],
    ["beside", [6, 1], [6, 5], false],
    ["ending before it", [-9, 3], [-6, 3], false],
    ["above", [-8, 7], [8, 7], false],
    ["a point inside", [1, 1], [1, 1], true],
    ["a point outside", [9, 1], [9, 1], false],
  ];
  it.each(lines)("by a line %s", (_, a, b, crosses) => {
    expect(crossesFrame(STAGE, a, b)).toBe(crosses);
    expect(crossesFrame(STAGE, b, a)).toBe(crosses);
  });
});
