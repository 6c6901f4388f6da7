import { describe, expect, it } from "vitest";
import { drawFigure, FIGURE_HEIGHT_M } from "@/lib/drawing/draw-figure";
import type { PlanPoint } from "@/lib/stage/frame";
import { numbersOf } from "./fixtures/find-stroke";
import { planOf } from "./fixtures/plan-of";

const SCENE = {
  plan: planOf({
    platforms: [
      {
        id: "P",
        outline: [
          [2, 1],
          [4, 1],
          [4, 3],
          [2, 3],
        ],
        height: 0.5,
        base: 0,
      },
    ],
  }),
  stage: { opening: { width: 10, height: 6 }, depth: 9, apron: 0, rake: 0 },
  viewer: { distance: 9, eyeHeight: 1.2, offset: 0 },
};

function heights(at: PlanPoint): { low: number; high: number } {
  const up = drawFigure(SCENE, at).flatMap((item) => (item.kind === "stroke" ? item.points.map(([, z]) => z) : []));
  return { low: Math.min(...up), high: Math.max(...up) };
}

describe("the figure for scale", () => {
  it("stands between the mean statures of men and women", () => {
    // ANSUR II (2012): men 1756 mm, women 1629 mm.
    expect(FIGURE_HEIGHT_M).toBeGreaterThan(1.629);
    expect(FIGURE_HEIGHT_M).toBeLessThan(1.756);
  });

  it("is true size at the plaster line, and half of it as far behind as the eye is before", () => {
    const near = heights([0, 0]);
    expect(near.low).toBeCloseTo(0, 2);
    expect(near.high - near.low).toBeCloseTo(FIGURE_HEIGHT_M, 2);
    const far = heights([0, 9]);
    expect(far.high - far.low).toBeCloseTo(FIGURE_HEIGHT_M / 2, 2);
  });

  it("is cut by the horizon at one height wherever it stands on a level floor", () => {
    // Alberti, De pictura, book I (the centric line at the height of a man crosses all heads alike), from memory.
    const shares = (
      [
        [0, 0],
        [-2, 2],
        [1, 8],
      ] as const
    ).map((at) => {
      const { low, high } = heights([at[0], at[1]]);
      return (SCENE.viewer.eyeHeight - low) / (high - low);
    });
    for (const share of shares) expect(share).toBeCloseTo(shares[0] as number, 9);
  });

  it("stands on a platform", () => {
    const s = 9 / 11;
    expect(heights([3, 2]).low).toBeCloseTo(1.2 + (0.5 - 1.2) * s, 2);
  });

  it("is not drawn behind the eye, and is finite elsewhere", () => {
    expect(drawFigure(SCENE, [0, -9])).toEqual([]);
    const list = drawFigure(SCENE, [1, 2], { id: "walker", heightM: 1.2 });
    expect(numbersOf(list).every(Number.isFinite)).toBe(true);
    expect(new Set(list.map(({ id }) => id)).size).toBe(list.length);
    expect(list.every(({ id }) => id.startsWith("walker."))).toBe(true);
  });
});
