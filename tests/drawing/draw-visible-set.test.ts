import { describe, expect, it } from "vitest";
import type { Draft } from "@/lib/draft/draft";
import type { Edit } from "@/lib/draft/edit";
import { applyEdit } from "@/lib/draft/edits/apply-edit";
import { newDraft } from "@/lib/draft/new-draft";
import { drawVisibleSet } from "@/lib/drawing/draw-visible-set";
import type { PlanPoint } from "@/lib/stage/frame";

function draw(...edits: readonly Edit[]): Draft {
  return edits.reduce((draft, change) => {
    const edited = applyEdit(draft, change);
    if (!edited.ok) throw new Error(edited.say);
    return edited.draft;
  }, newDraft("m"));
}

const wall = (upstage: number, half: number, height: number): Edit => {
  const corners: PlanPoint[] = [
    [-half, upstage],
    [half, upstage],
  ];
  return { edit: "add-walls", corners, closed: false, height, thickness: 0 };
};

const strokesOf = (draft: Draft, element: string) =>
  drawVisibleSet(draft.exercise).find((thing) => thing.element === element)?.strokes ?? [];

describe("the set as the eye sees it", () => {
  it("leaves out what stands behind a wall, and shows it again where the wall is lower", () => {
    expect(strokesOf(draw(wall(2, 3, 3), wall(4, 1, 1)), "W2")).toEqual([]);
    expect(strokesOf(draw(wall(2, 3, 0.5), wall(4, 1, 1)), "W2").length).toBeGreaterThan(0);
    // The nearer wall is whole either way: four edges.
    expect(strokesOf(draw(wall(2, 3, 3), wall(4, 1, 1)), "W1").map(({ points }) => points.length)).toEqual([
      2, 2, 2, 2,
    ]);
  });

  it("cuts a line where a wall begins to hide it", () => {
    const corners: PlanPoint[] = [
      [0, 2],
      [3, 2],
    ];
    const before: Edit = { edit: "add-walls", corners, closed: false, height: 4, thickness: 0 };
    const far = strokesOf(draw(before, wall(4, 1, 2)), "W2").flatMap(({ points }) => points);
    // By similar triangles the nearer wall's end, straight before the eye, hides all to the right of it.
    expect(Math.max(...far.map(([x]) => x))).toBeCloseTo(0, 6);
    expect(Math.min(...far.map(([x]) => x))).toBeLessThan(-0.5);
  });

  it("draws walls thick and by hand, and the stage faint", () => {
    const draft = draw(wall(2, 3, 3));
    expect(new Set(strokesOf(draft, "W1").map(({ weight, hand }) => `${weight} ${hand}`))).toEqual(
      new Set(["thick true"]),
    );
    expect(strokesOf(draft, "stage").length).toBeGreaterThan(0);
    expect(strokesOf(draft, "stage").every(({ faint }) => faint)).toBe(true);
  });
});
