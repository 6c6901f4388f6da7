import { describe, expect, it } from "vitest";
import { sayPlaced } from "@/lib/draft/bring/place/say-placed";
import { newDraft } from "@/lib/draft/new-draft";
import type { OpeningKind } from "@/lib/plan/plan";
import type { PlanPoint } from "@/lib/stage/frame";
import { edited, fiveWalls } from "../../edits/five-walls";

const opening = (kind: OpeningKind, at: number) =>
  ({ kind, at, width: 0.5, sill: 0, head: 2, depth: null, leaves: 1, hinge: null, swing: "offstage" }) as const;

/** Walls through some places, the first of them with openings. */
function made(corners: readonly PlanPoint[], kinds: readonly OpeningKind[] = [], start = newDraft("m")) {
  const walls = corners.slice(1).map((_, i) => ({
    thickness: 0,
    onstage: "right" as const,
    openings: i === 0 ? kinds.map((kind, n) => opening(kind, n * 0.6)) : [],
  }));
  const before = new Set(start.exercise.plan.walls.map(({ id }) => id));
  const draft = edited(start, { edit: "bring-walls", runs: [{ corners, closed: false, walls }], height: 4 });
  const things = draft.exercise.plan.walls
    .filter(({ id }) => !before.has(id))
    .map(({ id }) => ({ kind: "wall", id }) as const);
  return [draft, things] as const;
}

describe("what came of a drawing, in words", () => {
  it.each([
    [[], "1 wall."],
    [["door"], "1 wall and 1 door."],
    [["window", "window", "door"], "1 wall, 1 door and 2 windows."],
    [["arch", "arch", "niche", "niche", "passage", "passage"], "1 wall, 2 arches, 2 passages and 2 niches."],
  ] as const)("counts %j", (kinds, words) => {
    const corners: PlanPoint[] = [
      [-4, 2],
      [4, 2],
    ];
    expect(sayPlaced(...made(corners, kinds), "m")[0]).toBe(words);
  });

  it("tells how far it reaches, on one side of the centre line or both, upstage or down", () => {
    const both = made([
      [-4, 1],
      [-3, 5],
      [3.5, 5],
    ]);
    expect(sayPlaced(...both, "m").slice(1)).toEqual([
      "7500 mm across, from 4000 mm stage right to 3500 mm stage left.",
      "4000 mm deep, from 1000 mm upstage to 5000 mm upstage.",
    ]);
    const right = made([
      [-4, -2],
      [-3, -1],
    ]);
    expect(sayPlaced(...right, "ft-in").slice(1)).toEqual([
      `3'-3 3/8" across, from 13'-1 1/2" stage right to 9'-10 1/8" stage right.`,
      `3'-3 3/8" deep, from 6'-6 3/4" downstage of the plaster line to 3'-3 3/8" downstage of it.`,
    ]);
  });

  it("leaves out what stood on the plan before", () => {
    const [draft, things] = made(
      [
        [-1, 0.5],
        [1, 0.5],
      ],
      [],
      fiveWalls(),
    );
    expect(sayPlaced(draft, things, "m")[0]).toBe("1 wall.");
  });
});
