import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { drawFurniture, letterFurniture } from "@/lib/drawing/plan-symbols/draw-furniture";
import { furnitureCorners } from "@/lib/plan/furniture-corners";
import { FURNITURE_KINDS, type Furniture } from "@/lib/plan/plan";

/** Room for rounding, metres. */
const SLACK_M = 1e-9;

function piece(parts: Partial<Furniture>): Furniture {
  return { id: "f", kind: "table", at: [0, 0], turn: 0, width: 2, depth: 1, height: 0.75, base: 0, ...parts };
}

const size = fc.double({ min: 0.2, max: 4, noNaN: true });
const angle = fc.double({ min: -7, max: 7, noNaN: true });

describe("furniture in plan", () => {
  it.each(FURNITURE_KINDS)(
    "draws a %s within its bounding box, and out to all four sides of it, however it is turned",
    (kind) => {
      fc.assert(
        fc.property(size, size, angle, (width, depth, turn) => {
          const item = piece({ kind, width, depth, turn, at: [1, 3] });
          const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
          const local = drawFurniture(item).flatMap((stroke) =>
            stroke.kind === "stroke"
              ? stroke.points.map(([x, y]) => [(x - 1) * cos + (y - 3) * sin, (y - 3) * cos - (x - 1) * sin] as const)
              : [],
          );
          const [us, vs] = [local.map(([u]) => u), local.map(([, v]) => v)];
          expect(Math.max(...us)).toBeLessThanOrEqual(width / 2 + SLACK_M);
          expect(Math.min(...us)).toBeGreaterThanOrEqual(-width / 2 - SLACK_M);
          expect(Math.max(...vs)).toBeLessThanOrEqual(depth / 2 + SLACK_M);
          expect(Math.min(...vs)).toBeGreaterThanOrEqual(-depth / 2 - SLACK_M);
          for (const [extreme, side] of [
            [Math.max(...us), width / 2],
            [-Math.min(...us), width / 2],
            [Math.max(...vs), depth / 2],
            [-Math.min(...vs), depth / 2],
          ] as const)
            expect(extreme).toBeGreaterThan(side * 0.98);
        }),
        { seed: 41, numRuns: 40 },
      );
    },
  );

  it("turns a box's corners with the engine's own", () => {
    const item = piece({ kind: "box", turn: 0.4, at: [1, 2] });
    const outline = drawFurniture(item)[0];
    if (outline?.kind !== "stroke") throw new Error("A box has an outline.");
    furnitureCorners(item).forEach(([x, y], i) => {
      expect(outline.points[i]?.[0]).toBeCloseTo(x, 9);
      expect(outline.points[i]?.[1]).toBeCloseTo(y, 9);
    });
  });

  it("has a chair's back away from the audience at no turn", () => {
    const back = drawFurniture(piece({ kind: "chair" })).find((stroke) => stroke.id.endsWith(".back"));
    if (back?.kind !== "stroke") throw new Error("A chair has a back.");
    for (const [, y] of back.points) expect(y).toBeGreaterThan(0);
  });

  it("tells the kinds apart", () => {
    const drawn = FURNITURE_KINDS.map((kind) => JSON.stringify(drawFurniture(piece({ kind }))));
    expect(new Set(drawn).size).toBe(FURNITURE_KINDS.length);
  });

  it("writes a name on a piece with room for it and beside one without", () => {
    const drawn = { items: [], scaleRatio: 48 };
    expect(letterFurniture(piece({ id: "desk" }), drawn)[0]?.at).toEqual([0, 0]);
    expect(letterFurniture(piece({ id: "desk", width: 0.3, depth: 0.3 }), drawn)[0]?.at).toEqual([0, -0.15]);
  });
});
