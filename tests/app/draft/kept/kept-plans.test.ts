import { beforeEach, describe, expect, it } from "vitest";
import type { Shelf } from "@/app/_parts/kept-work/shelf";
import type { DeskStore } from "@/app/draft/desk/desk";
import { createDesk } from "@/app/draft/desk/desk-store";
import { keepVersion, keptVersions } from "@/app/draft/exercise/kept-versions";
import {
  forgetPlan,
  freshKey,
  keepPlan,
  keptPlan,
  keptPlans,
  lastOpen,
  openKept,
  type Work,
} from "@/app/draft/kept/kept-plans";
import { readDraft } from "@/lib/draft/read-draft";
import { writeDraft } from "@/lib/draft/write-draft";
import { smallShelf } from "../../parts/kept-work/small-shelf";

let kept = smallShelf();
const shelf = (): Shelf => kept;
const read = (text: string) => {
  const reading = readDraft(text);
  return reading.ok ? reading.draft : null;
};
const fileOf = (work: Pick<Work, "history">) => JSON.stringify(writeDraft(work.history.draft));

beforeEach(() => {
  kept = smallShelf();
});

/** A desk with a wall, renamed, moved twice in one drag by keys, and one step undone. */
function busyDesk(): DeskStore {
  const desk = createDesk("ft-in");
  const { apply } = desk.getState();
  apply({
    edit: "add-walls",
    corners: [
      [-3, 1],
      [-2, 4],
      [2, 4.5],
    ],
    closed: false,
    height: 3.6,
    thickness: 0.0254,
  });
  apply({ edit: "rename-corner", id: "B", to: "K" });
  const wall = [{ kind: "wall", id: "W1" }] as const;
  apply({ edit: "move", things: wall, by: [0.1, 0] });
  apply({ edit: "move", things: wall, by: [0.1, 0] }, { joins: true });
  apply({ edit: "add-point", at: [0, 2] });
  desk.getState().undo();
  return desk;
}

describe("plans kept in the browser", () => {
  it("come back with all that can be undone and done again", () => {
    const desk = busyDesk();
    expect(keepPlan(shelf(), "1", desk.getState(), "2026-01-01T00:00:00.000Z")).toBe(true);
    const back = keptPlan(shelf(), "1", read);
    expect(back && fileOf(back)).toBe(fileOf(desk.getState()));
    expect(back?.history.past).toHaveLength(3);
    expect(back?.history.future).toHaveLength(1);
    const again = createDesk("m");
    if (back) again.getState().open(back);
    for (let i = 0; i < 3; i++) again.getState().undo();
    expect(again.getState().history.draft.exercise.plan.corners.size).toBe(0);
    for (let i = 0; i < 4; i++) again.getState().redo();
    expect(again.getState().history.draft.exercise.plan.corners.size).toBe(4);
    expect(lastOpen(shelf())).toBe("1");
  });

  it("stand on the desk before their steps, and nothing is lost by undoing, drawing or keeping at once", () => {
    const desk = busyDesk();
    keepPlan(shelf(), "1", desk.getState(), "2026-01-01T00:00:00.000Z");
    const opened = () => {
      const kept = openKept(shelf(), "1", read);
      if (!kept) throw new Error("Nothing was kept.");
      const again = createDesk("m");
      again.getState().open(kept.work, kept);
      expect(fileOf(again.getState())).toBe(fileOf(desk.getState()));
      expect(again.getState().history.past).toHaveLength(0);
      expect([kept.mayUndo, kept.mayRedo]).toEqual([true, true]);
      return again;
    };
    const undone = opened();
    for (let i = 0; i < 3; i++) undone.getState().undo();
    expect(undone.getState().history.draft.exercise.plan.corners.size).toBe(0);
    for (let i = 0; i < 4; i++) undone.getState().redo();
    expect(undone.getState().history.draft.exercise.plan.corners.size).toBe(4);

    const drawn = opened();
    drawn.getState().apply({ edit: "add-point", at: [1, 2] });
    expect(drawn.getState().history.past).toHaveLength(4);
    for (let i = 0; i < 4; i++) drawn.getState().undo();
    expect(drawn.getState().history.draft.exercise.plan.corners.size).toBe(0);

    // One step at a time, as at leisure: the plan on the desk is the very same all the while.
    const slow = opened();
    const { draft } = slow.getState().history;
    for (let i = 0; i < 3; i++) slow.getState().recall(() => false);
    expect(slow.getState().kept).not.toBeNull();
    slow.getState().recall(() => false);
    expect(slow.getState().kept).toBeNull();
    expect(slow.getState().history.draft).toBe(draft);
    expect(slow.getState().history.past).toHaveLength(3);
    keepPlan(shelf(), "2", slow.getState(), "2026-01-02T00:00:00.000Z");
    expect(keptPlan(shelf(), "2", read)?.history.past).toHaveLength(3);
  });

  it("come back as they are where their steps cannot be followed", () => {
    const desk = busyDesk();
    keepPlan(shelf(), "1", desk.getState(), "2026-01-01T00:00:00.000Z");
    const name = "plasterline.draft.plan.1";
    const plan = JSON.parse(shelf().getItem(name) ?? "null");
    shelf().setItem(name, JSON.stringify({ ...plan, done: [[{ edit: "no such edit" }]] }));
    const back = keptPlan(shelf(), "1", read);
    expect(back && fileOf(back)).toBe(fileOf(desk.getState()));
    expect(back?.history.past).toHaveLength(0);
  });

  it("bring back a run of walls that was under way", () => {
    const desk = createDesk("ft-in");
    desk.getState().take({ kind: "walls", corners: [] });
    desk.getState().setAim({ kind: "place", at: [-3, 1], to: [], guides: [] });
    desk.getState().setDown();
    keepPlan(shelf(), "1", desk.getState(), "2026-01-01T00:00:00.000Z");
    expect(keptPlan(shelf(), "1", read)?.hand).toEqual({ kind: "walls", corners: [[-3, 1]] });
  });

  it("are listed, the one changed last first, each under a key of its own", () => {
    const desk = busyDesk();
    keepPlan(shelf(), "1", desk.getState(), "2026-01-01T00:00:00.000Z");
    keepPlan(shelf(), freshKey(shelf()), desk.getState(), "2026-01-02T00:00:00.000Z");
    expect(keptPlans(shelf()).map(({ key }) => key)).toEqual(["2", "1"]);
    expect(keptPlan(shelf(), "7", read)).toBeNull();
    shelf().setItem("plasterline.draft.plan.7", "not a plan");
    expect(keptPlan(shelf(), "7", read)).toBeNull();
  });

  it("take their versions with them when they are thrown away, and nobody else's", () => {
    const version = { when: "2026-01-01T00:00:00.000Z", name: "Before the niche", text: "{}" };
    for (const key of ["1", "2"]) {
      keepPlan(shelf(), key, busyDesk().getState(), "2026-01-01T00:00:00.000Z");
      keepVersion(shelf(), key, { ...version, name: `Of ${key}` });
    }
    forgetPlan(shelf(), "2");
    expect(keptPlans(shelf()).map(({ key }) => key)).toEqual(["1"]);
    // The next plan gets the key of the one that went.
    expect(freshKey(shelf())).toBe("2");
    expect(keptVersions(shelf(), "2")).toEqual([]);
    expect(keptVersions(shelf(), "1").map(({ name }) => name)).toEqual(["Of 1"]);
  });
});
