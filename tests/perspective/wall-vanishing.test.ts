import { describe, expect, it } from "vitest";
import { wallVanishing } from "@/lib/perspective/wall-vanishing";
import type { Plan, Wall } from "@/lib/plan/plan";
import type { PlanPoint } from "@/lib/stage/frame";

const viewer = { distance: 12, eyeHeight: 3, offset: 1 };
const wall: Wall = {
  id: "W1",
  from: "A",
  to: "B",
  height: 4,
  thickness: 0,
  base: 0,
  onstage: "right",
  openings: [],
};

function planWith(corners: Plan["corners"]): Plan {
  return { corners, walls: [wall], platforms: [], stairs: [], furniture: [], columns: [], masking: [] };
}

function vanishingOf(from: PlanPoint, to: PlanPoint, rake = 0) {
  const corners = new Map([
    ["A", from],
    ["B", to],
  ]);
  return wallVanishing(planWith(corners), wall, { rake }, viewer);
}

describe("wallVanishing", () => {
  it.each<{ what: string; from: PlanPoint; to: PlanPoint; X: number; measuring: number }>([
    { what: "square to the plaster line", from: [4, 1], to: [4, 6], X: 1, measuring: -11 },
    { what: "at 45 degrees to the right", from: [0, 1], to: [3, 4], X: 13, measuring: 13 - 12 * Math.SQRT2 },
    { what: "at 45 degrees to the left", from: [0, 1], to: [-3, 4], X: -11, measuring: -11 + 12 * Math.SQRT2 },
    { what: "drawn downstage", from: [3, 4], to: [0, 1], X: 13, measuring: 13 - 12 * Math.SQRT2 },
    { what: "3 across for 4 up", from: [0, 0], to: [3, 4], X: 10, measuring: -5 },
  ])("a wall $what", ({ from, to, X, measuring }) => {
    const found = vanishingOf(from, to);
    expect(found.vanishingPoint?.[0]).toBeCloseTo(X, 12);
    expect(found.vanishingPoint?.[1]).toBe(3);
    expect(found.footVanishingPoint).toEqual(found.vanishingPoint);
    expect(found.measuringPoint?.[0]).toBeCloseTo(measuring, 12);
    expect(found.measuringPoint?.[1]).toBe(3);
  });

  it("on a rake the foot runs above the horizon by the rake times the eye's distance, whatever the wall's direction", () => {
    for (const to of [
      [4, 6],
      [7, 3],
      [-6, 9],
    ] as const) {
      const found = vanishingOf([4, 1], to, 1 / 20);
      expect(found.footVanishingPoint?.[0]).toBeCloseTo(found.vanishingPoint?.[0] ?? Number.NaN, 12);
      expect(found.footVanishingPoint?.[1]).toBeCloseTo(3.6, 12);
      expect(found.vanishingPoint?.[1]).toBe(3);
    }
  });

  it("a wall from the apron on to a rake has the foot of its raked part", () => {
    expect(vanishingOf([4, -1], [4, 5], 1 / 20).footVanishingPoint?.[1]).toBeCloseTo(3.6, 12);
    expect(vanishingOf([4, 5], [4, -1], 1 / 20).footVanishingPoint?.[1]).toBeCloseTo(3.6, 12);
  });

  it("on the apron of a raked stage the foot keeps to the horizon", () => {
    expect(vanishingOf([4, -3], [4, -1], 1 / 20).footVanishingPoint).toEqual([1, 3]);
  });

  it.each<{ what: string; from: PlanPoint; to: PlanPoint }>([
    { what: "parallel to the plaster line", from: [-3, 5], to: [3, 5] },
    { what: "of no length", from: [2, 5], to: [2, 5] },
  ])("a wall $what has none", ({ from, to }) => {
    const none = { vanishingPoint: null, footVanishingPoint: null, measuringPoint: null };
    expect(vanishingOf(from, to)).toEqual(none);
  });

  it("a wall without its corner has none", () => {
    const found = wallVanishing(planWith(new Map()), wall, { rake: 0 }, viewer);
    expect(found).toEqual({ vanishingPoint: null, footVanishingPoint: null, measuringPoint: null });
  });
});
