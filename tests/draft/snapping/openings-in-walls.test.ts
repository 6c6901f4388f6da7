import { describe, expect, it } from "vitest";
import { placeOpening } from "@/lib/draft/snapping/place-opening";
import { wallClearances } from "@/lib/draft/snapping/wall-clearances";
import { opening, planOf, wallAB } from "../../drawing/fixtures/plan-of";

const plan = planOf({
  corners: { A: [-4, 3], B: [6, 3] },
  walls: [
    wallAB({
      id: "W1",
      openings: [opening({ id: "door", at: 1, width: 1 }), opening({ id: "window", at: 6, width: 2 })],
    }),
  ],
});

describe("wallClearances", () => {
  it("of an opening between two others: to both ends of the wall and to the neighbours", () => {
    const clear = wallClearances(plan, "W1", { at: 3.5, width: 1 }, null);
    expect(clear?.start).toEqual({ length: 3.5, from: [-4, 3], to: [-0.5, 3], next: { kind: "corner", id: "A" } });
    expect(clear?.end).toEqual({ length: 5.5, from: [0.5, 3], to: [6, 3], next: { kind: "corner", id: "B" } });
    expect(clear?.before).toMatchObject({
      length: 1.5,
      from: [-2, 3],
      to: [-0.5, 3],
      next: { kind: "opening", id: "door" },
    });
    expect(clear?.after).toMatchObject({ length: 1.5, next: { kind: "opening", id: "window" } });
  });

  it("is no neighbour of itself, and has the corner where no neighbour is", () => {
    const clear = wallClearances(plan, "W1", { at: 1.5, width: 1 }, "door");
    expect(clear?.before).toMatchObject({ length: 1.5, next: { kind: "corner", id: "A" } });
    expect(clear?.after).toMatchObject({ length: 3.5, next: { kind: "opening", id: "window" } });
  });

  it("is less than 0 where openings lie over each other or past the wall's end", () => {
    expect(wallClearances(plan, "W1", { at: 5.5, width: 1 }, null)?.after.length).toBeCloseTo(-0.5, 12);
    expect(wallClearances(plan, "W1", { at: 9.5, width: 1 }, null)?.end.length).toBeCloseTo(-0.5, 12);
  });

  it("is null for a wall that is not there", () => {
    expect(wallClearances(plan, "W9", { at: 0, width: 1 }, null)).toBeNull();
  });
});

describe("placeOpening", () => {
  it.each([
    { name: "by the grid from the nearer end", pointed: [-2.1, 3.4], expected: { at: 1.5, caughtBy: "grid" } },
    { name: "by the grid from the far end", pointed: [4.6, 3], expected: { at: 8, caughtBy: "grid" } },
    { name: "in the middle of the wall", pointed: [1.05, 2.9], expected: { at: 4.5, caughtBy: "middle" } },
    { name: "never before the start", pointed: [-9, 3], expected: { at: 0, caughtBy: null } },
    { name: "never past the end", pointed: [9, 3], expected: { at: 9, caughtBy: null } },
  ] as const)("puts an opening $name", ({ pointed, expected }) => {
    expect(placeOpening(plan, "W1", 1, pointed, { grid: 0.5, tolerance: 0.1 })).toEqual(expected);
  });

  it("has no place in a wall shorter than the opening", () => {
    expect(placeOpening(plan, "W1", 11, [0, 3], { grid: null, tolerance: 0.1 })).toBeNull();
  });
});
