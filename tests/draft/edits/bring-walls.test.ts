import { describe, expect, it } from "vitest";
import type { BroughtRun, Edit } from "@/lib/draft/edit";
import { applyEdit } from "@/lib/draft/edits/apply-edit";
import { addBroughtWalls } from "@/lib/draft/edits/bring-walls";
import { newDraft } from "@/lib/draft/new-draft";
import { edited, fiveWalls } from "./five-walls";

const plain = { thickness: 0, onstage: "right", openings: [] } as const;
const door = {
  kind: "door",
  at: 1,
  width: 0.9,
  sill: 0,
  head: 2.1,
  depth: null,
  leaves: 1,
  hinge: "start",
  swing: "offstage",
} as const;
const bring = (...runs: readonly BroughtRun[]) => ({ edit: "bring-walls", runs, height: 4 }) satisfies Edit;

describe("bring-walls", () => {
  it("adds a run's walls each with its own thickness, side and openings, and works the marks out", () => {
    const { exercise } = edited(
      newDraft("m"),
      bring({
        corners: [
          [-3, 1],
          [-3, 5],
          [3, 5],
        ],
        closed: false,
        walls: [plain, { thickness: 0.2, onstage: "left", openings: [door] }],
      }),
    );
    expect(exercise.plan.walls).toMatchObject([
      { id: "W1", from: "A", to: "B", height: 4, thickness: 0, onstage: "right", openings: [] },
      { id: "W2", from: "B", to: "C", height: 4, thickness: 0.2, onstage: "left", openings: [{ ...door, id: "door" }] },
    ]);
    expect(exercise.task.marks).toContain("W2.door.start.head");
  });

  it("closes a ring", () => {
    const ring: BroughtRun = {
      corners: [
        [0, 1],
        [2, 1],
        [2, 3],
      ],
      closed: true,
      walls: [plain, plain, plain],
    };
    const { plan } = edited(newDraft("m"), bring(ring)).exercise;
    expect(plan.walls.map(({ from, to }) => from + to)).toEqual(["AB", "BC", "CA"]);
  });

  it("adds wall by wall what it cannot add whole, and says what stays away", () => {
    const start = fiveWalls();
    const { corners, walls } = start.exercise.plan;
    const [from, to] = [corners.get(walls[0]?.from ?? ""), corners.get(walls[0]?.to ?? "")];
    if (!from || !to) throw new Error("The first wall has no ends.");
    const run: BroughtRun = { corners: [from, to, [to[0], to[1] + 9]], closed: false, walls: [plain, plain] };
    const { draft, refused } = addBroughtWalls(start, bring(run));
    expect(draft.exercise.plan.walls).toHaveLength(walls.length + 1);
    expect(refused).toHaveLength(1);
    expect(refused[0]).toContain("already");
  });

  it("is refused with a reason where nothing of it can be added", () => {
    const here: BroughtRun = {
      corners: [
        [1, 1],
        [1, 1],
      ],
      closed: false,
      walls: [plain],
    };
    for (const edit of [bring(here), bring()]) {
      const done = applyEdit(newDraft("m"), edit);
      expect(done.ok).toBe(false);
      if (!done.ok) expect(done.say).toMatch(/one place|no wall/);
    }
  });
});
