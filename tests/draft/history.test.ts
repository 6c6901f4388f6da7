import { describe, expect, it } from "vitest";
import type { Edit } from "@/lib/draft/edit";
import { edit, type History, redo, startHistory, undo } from "@/lib/draft/history";
import type { PlanPoint } from "@/lib/stage/frame";
import { fiveWalls } from "./edits/five-walls";

const moveTo = (to: PlanPoint, id = "B"): Edit => ({ edit: "move-corner", id, to });

function made(history: History, change: Edit, joins = false): History {
  const edited = edit(history, change, { joins });
  expect(edited.ok ? "" : edited.say).toBe("");
  return edited.ok ? edited.history : history;
}

describe("history", () => {
  it("of a drag is one step, undone and done again as one", () => {
    const start = startHistory(fiveWalls());
    const dragged = made(made(made(start, moveTo([-4, 2])), moveTo([-4, 3]), true), moveTo([-4, 4]), true);
    expect(dragged.past.length).toBe(1);
    expect(undo(dragged).draft).toBe(start.draft);
    expect(redo(undo(dragged)).draft).toBe(dragged.draft);
  });

  it("keeps drags apart: the first move of each joins nothing", () => {
    const once = made(made(startHistory(fiveWalls()), moveTo([-4, 2])), moveTo([-4, 3]), true);
    expect(made(made(once, moveTo([-4, 4])), moveTo([-4, 5]), true).past.length).toBe(2);
  });

  it.each([
    { name: "another thing", change: moveTo([4, 4], "E") },
    { name: "another change", change: { edit: "rename-corner", id: "B", to: "Q" } as const },
    { name: "a new thing", change: { edit: "add-point", at: [0, 1] } as const },
  ])("does not join $name to the step before", ({ change }) => {
    expect(made(made(startHistory(fiveWalls()), moveTo([-4, 2])), change, true).past.length).toBe(2);
  });

  it("does not join a step to one that was undone and done again", () => {
    const back = redo(undo(made(startHistory(fiveWalls()), moveTo([-4, 2]))));
    expect(made(back, moveTo([-4, 3]), true).past.length).toBe(2);
  });

  it("forgets what was undone when something else is done", () => {
    const undone = undo(made(startHistory(fiveWalls()), moveTo([-4, 2])));
    expect(undone.future.length).toBe(1);
    const other = made(undone, moveTo([-4, 3]));
    expect(redo(other)).toBe(other);
  });

  it("takes no step for what changes nothing, nor for what cannot be done", () => {
    const start = startHistory(fiveWalls());
    expect(made(start, { edit: "move", things: [{ kind: "wall", id: "W1" }], by: [0, 0] })).toBe(start);
    expect(edit(start, moveTo([0, 0], "Z"))).toEqual({ ok: false, say: 'There is no corner "Z" on this plan.' });
  });

  it("is without end: a thousand steps back and forth", () => {
    const start = startHistory(fiveWalls());
    let history = start;
    for (let i = 1; i <= 1000; i++) history = made(history, moveTo([-4, i / 1000]));
    const last = history.draft;
    for (let i = 0; i < 1000; i++) history = undo(history);
    expect(history.draft).toBe(start.draft);
    for (let i = 0; i < 1000; i++) history = redo(history);
    expect(history.draft).toBe(last);
  });
});
