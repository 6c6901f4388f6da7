import { describe, expect, it } from "vitest";
import { drawHidden, hiddenStretches } from "@/lib/draft/sense/sightlines/draw-hidden";
import type { Seat } from "@/lib/draft/sense/sightlines/seat";
import { sightlines } from "@/lib/draft/sense/sightlines/sightlines";
import type { Wall } from "@/lib/plan/plan";
import { type WallLine, wallLine } from "@/lib/plan/wall-line";
import { fiveWalls } from "../edits/five-walls";

/** The set opens downstage: A [-5, 1], B [-4, 1], C [-3, 5], D [3, 5], E [4, 1], F [5, 1]; the opening is 10 m wide. */
const draft = fiveWalls();
const { plan } = draft.exercise;
const lineOf = (id: string) => wallLine(plan, plan.walls.find((wall) => wall.id === id) as Wall) as WallLine;

function seen(at: readonly [number, number]) {
  const seat: Seat = { id: "any", name: "Any seat", at, eyeHeight: 1.2 };
  const [sight] = sightlines(draft, [seat]);
  if (!sight) throw new Error("A seat sees something.");
  return sight;
}

describe("what of the walls a seat does not see", () => {
  it("is nothing from the middle of the house, where every face looks downstage", () => {
    const { seen: outlines } = seen([0, -12]);
    expect(plan.walls.flatMap(({ id }) => hiddenStretches(lineOf(id), outlines))).toEqual([]);
  });

  it("is all of a wall that is seen from behind", () => {
    const far = seen([-14, -4]);
    expect(hiddenStretches(lineOf("W2"), far.seen)).toEqual([[0, lineOf("W2").length]]);
    expect(far.walls.find(({ id }) => id === "W2")?.hidden).toBe(1);
  });

  it("ends where the sight line past a corner meets the wall", () => {
    // From [-8, -4] the line past B [-4, 1] goes 5 up in 4: at y = 5 it is at x = -0.8, 2.2 m along the back wall from C [-3, 5].
    const { seen: outlines } = seen([-8, -4]);
    const [stretch] = hiddenStretches(lineOf("W3"), outlines);
    expect(stretch?.[0]).toBe(0);
    expect(Math.abs((stretch?.[1] ?? 0) - 2.2)).toBeLessThan(0.08);
  });

  it("is hatched in graphite, onstage of the wall, each line by a name of its own", () => {
    const list = drawHidden(seen([-10, -4]), plan, 50);
    expect(list.length).toBeGreaterThan(10);
    expect(new Set(list.map(({ id }) => id)).size).toBe(list.length);
    for (const item of list) {
      expect(item.pencil).toBe("graphite");
      if (item.kind !== "stroke" || !item.id.startsWith("sight.hidden.W3")) continue;
      for (const [, up] of item.points) expect(up).toBeLessThanOrEqual(5 + 1e-9);
    }
  });
});
