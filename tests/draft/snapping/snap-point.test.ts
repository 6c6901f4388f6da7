import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { sayCaught } from "@/lib/draft/snapping/say-caught";
import type { SnapContext } from "@/lib/draft/snapping/snap";
import { snapPoint } from "@/lib/draft/snapping/snap-point";
import { GRID_STEPS, type StepDirection, stepPoint } from "@/lib/draft/snapping/step-point";
import type { PlanPoint } from "@/lib/stage/frame";
import { planOf, wallAB } from "../../drawing/fixtures/plan-of";
import { seeded } from "../../seeded";

// A wall of the 3-4-5 triangle, so that every expected place can be reckoned by head.
const raking = planOf({ corners: { A: [-4, 1], B: [-1, 5] }, walls: [wallAB({ id: "W1" })] });
const square = planOf({ corners: { A: [-3, 1], B: [-3, 4] }, walls: [wallAB({ id: "W1" })] });

function context(parts: Partial<SnapContext>): SnapContext {
  return { plan: raking, grid: null, tolerance: 0.1, from: null, without: new Set(), ...parts };
}

describe("snapPoint", () => {
  it.each([
    { name: "a corner", at: [-0.95, 5.05], expected: [-1, 5], say: "on corner B" },
    { name: "the mirror image of a corner", at: [1.04, 4.95], expected: [1, 5], say: "opposite corner B" },
    { name: "the centre line", at: [0.05, 2.2], expected: [0, 2.2], say: "on the centre line" },
    { name: "the plaster line", at: [2.2, -0.05], expected: [2.2, 0], say: "on the plaster line" },
    {
      name: "both of them where they cross",
      at: [0.05, 0.06],
      expected: [0, 0],
      say: "on the centre line, on the plaster line",
    },
    // 2.5 along W1 is (-2.5, 3); 0.05 to its right is (+0.04, -0.03).
    { name: "a wall", at: [-2.46, 2.97], expected: [-2.5, 3], say: "on wall W1" },
    // 7 along W1, two beyond its end: (-4 + 4.2, 1 + 5.6).
    { name: "the prolongation of a wall", at: [0.24, 6.57], expected: [0.2, 6.6], say: "in line with W1" },
    { name: "nothing", at: [3, 3], expected: [3, 3], say: "" },
  ] as const)("catches $name", ({ at, expected, say }) => {
    const snapped = snapPoint(at, context({}));
    expect(snapped.at[0]).toBeCloseTo(expected[0], 9);
    expect(snapped.at[1]).toBeCloseTo(expected[1], 9);
    expect(sayCaught(snapped.to)).toBe(say);
  });

  it.each([
    // Right of W1's direction (0.6, 0.8) is (0.8, -0.6): from B, 2 along.
    { name: "square to a wall", at: [0.63, 3.84], expected: [0.6, 3.8], say: "square to W1" },
    {
      name: "level with the corner drawn from",
      at: [2.3, 5.05],
      expected: [2.3, 5],
      say: "parallel to the plaster line",
    },
    { name: "straight upstage of it", at: [-1.05, 7.3], expected: [-1, 7.3], say: "parallel to the centre line" },
    // From B the plaster line's direction, as long as W1, which is 5.
    { name: "level and as long as a wall", at: [4.06, 5.03], expected: [4, 5], say: "opposite corner A" },
    {
      name: "level and as long as a wall, no mirror image near",
      at: [-5.95, 5.05],
      expected: [-6, 5],
      say: "parallel to the plaster line, as long as W1",
    },
    { name: "as long as a wall", at: [3.04, 8.03], expected: [3, 8], say: "as long as W1" },
    {
      name: "level, on the centre line",
      at: [0.06, 5.06],
      expected: [0, 5],
      say: "on the centre line, parallel to the plaster line",
    },
  ] as const)("catches $name", ({ at, expected, say }) => {
    const plan = say.startsWith("opposite") ? planOf({ ...raking, corners: { A: [-4, 5], B: [-1, 5] } }) : raking;
    const snapped = snapPoint(at, context({ plan, from: [-1, 5] }));
    expect(sayCaught(snapped.to)).toBe(say);
    expect(snapped.at[0]).toBeCloseTo(expected[0], 9);
    expect(snapped.at[1]).toBeCloseTo(expected[1], 9);
  });

  it("goes by the grid, along a wall from where it begins, along a direction from the corner drawn from", () => {
    expect(snapPoint([2.24, 3.1], context({ grid: 0.5 })).at).toEqual([2, 3]);
    expect(snapPoint([0.03, 2.24], context({ grid: 0.5 })).at).toEqual([0, 2]);
    const along = snapPoint([-2.46 + 0.06, 2.97 + 0.08], context({ grid: 0.5 }));
    expect(along.at[0]).toBeCloseTo(-2.5, 9);
    expect(along.at[1]).toBeCloseTo(3, 9);
    const squareOff = snapPoint([0.65, 3.84], context({ grid: 0.5, from: [-1, 5] }));
    expect(Math.hypot(squareOff.at[0] + 1, squareOff.at[1] - 5)).toBeCloseTo(2, 9);
  });

  it("is not caught by corners that are being moved, nor by their walls", () => {
    const without = new Set(["B"]);
    expect(snapPoint([-0.95, 5.05], context({ without })).to).toEqual([]);
    expect(snapPoint([-2.46, 2.97], context({ without })).to).toEqual([]);
  });

  it("draws a guide from where a prolongation begins, and none along a wall that is drawn already", () => {
    const [guide, ...more] = snapPoint([0.24, 6.57], context({})).guides;
    expect(guide?.from).toEqual([-1, 5]);
    expect(more).toEqual([]);
    expect(snapPoint([-2.46, 2.97], context({})).guides).toEqual([]);
  });

  it("moves no place farther than the tolerance at a crossing, or than the grid's nearest step", () => {
    const coordinate = fc.double({ min: -6, max: 6, noNaN: true });
    fc.assert(
      fc.property(fc.tuple(coordinate, coordinate), fc.constantFrom(null, 0.5, 0.3048), (at, grid) => {
        const snapped = snapPoint(at, context({ plan: square, grid, from: [-3, 4] }));
        const off = Math.hypot(snapped.at[0] - at[0], snapped.at[1] - at[1]);
        expect(off).toBeLessThanOrEqual(grid === null ? 0.15 : 0.15 + grid);
        if (snapped.to.length === 0) expect(snapped.at).toEqual(at);
      }),
      seeded,
    );
  });

  it("with no tolerance moves nothing, and still tells what stands there", () => {
    const still = (at: PlanPoint) => snapPoint(at, context({ grid: 0.5, tolerance: 0 }));
    expect(still([-1, 5])).toEqual({ at: [-1, 5], to: [{ by: "corner", id: "B" }], guides: [] });
    expect(still([1.37, 2.5]).at).toEqual([1.37, 2.5]);
    expect(still([1.5, 2.5]).to).toEqual([{ by: "grid" }]);
    expect(sayCaught(still([-2.5, 3]).to)).toBe("on wall W1");
    expect(still([-2.5, 3]).at[0]).toBeCloseTo(-2.5, 9);
  });
});

describe("stepPoint", () => {
  it.each([
    { at: [0, 0], direction: "stage left", expected: [0.5, 0] },
    { at: [0.2, 0], direction: "stage left", expected: [0.5, 0] },
    { at: [0.2, 0], direction: "stage right", expected: [0, 0] },
    { at: [0.5, 0.7], direction: "upstage", expected: [0.5, 1] },
    { at: [0.5, 0], direction: "downstage", expected: [0.5, -0.5] },
  ] as const)("from $at to $direction", ({ at, direction, expected }) => {
    expect(stepPoint(at, direction, 0.5)).toEqual(expected);
  });

  it("there and back stands on the grid where it began", () => {
    const back: Record<StepDirection, StepDirection> = {
      "stage left": "stage right",
      "stage right": "stage left",
      upstage: "downstage",
      downstage: "upstage",
    };
    fc.assert(
      fc.property(
        fc.constantFrom(...GRID_STEPS["ft-in"], ...GRID_STEPS.m),
        fc.tuple(fc.integer({ min: -400, max: 400 }), fc.integer({ min: -400, max: 400 })),
        fc.constantFrom(...(Object.keys(back) as StepDirection[])),
        (step, [i, j], direction) => {
          const at: PlanPoint = [i * step, j * step];
          const [x, y] = stepPoint(stepPoint(at, direction, step), back[direction], step);
          expect(Math.hypot(x - at[0], y - at[1])).toBeLessThan(1e-9);
        },
      ),
      seeded,
    );
  });
});
