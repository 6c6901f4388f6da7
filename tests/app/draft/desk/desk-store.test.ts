import { describe, expect, it } from "vitest";
import { type DeskStore, shownDraft } from "@/app/draft/desk/desk";
import { createDesk } from "@/app/draft/desk/desk-store";
import { FOOT_M } from "@/lib/measure/length";
import type { PlanPoint } from "@/lib/stage/frame";

const FIVE_WALLS = [
  [-12, 1],
  [-10, 12],
  [-4, 18],
  [6, 18],
  [10, 12],
  [12, 1],
] as const;

/** Holds the pencil at a place, feet. */
function hold(desk: DeskStore, [x, y]: readonly [number, number]) {
  const at: PlanPoint = [x * FOOT_M, y * FOOT_M];
  desk.getState().setAim({ kind: "place", at, to: [], guides: [] });
}

function press(desk: DeskStore, at: readonly [number, number]) {
  hold(desk, at);
  desk.getState().setDown();
}

function drawWalls(desk: DeskStore, corners: readonly (readonly [number, number])[] = FIVE_WALLS) {
  desk.getState().take({ kind: "walls", corners: [] });
  for (const corner of corners) press(desk, corner);
  desk.getState().end();
}

const planOf = (desk: DeskStore) => desk.getState().history.draft.exercise.plan;
const shownPlan = (desk: DeskStore) => shownDraft(desk.getState()).exercise.plan;

describe("the drafting desk", () => {
  it("draws a run of walls corner by corner, as one step", () => {
    const desk = createDesk("ft-in");
    drawWalls(desk);
    expect([...planOf(desk).corners.keys()]).toEqual(["A", "B", "C", "D", "E", "F"]);
    expect(planOf(desk).walls.map(({ id, from, to }) => `${id} ${from}${to}`)).toEqual([
      "W1 AB",
      "W2 BC",
      "W3 CD",
      "W4 DE",
      "W5 EF",
    ]);
    expect(desk.getState().history.past).toHaveLength(1);
    expect(desk.getState().said).toBe("5 walls are on the plan.");
    desk.getState().undo();
    expect(planOf(desk).walls).toEqual([]);
    desk.getState().redo();
    expect(planOf(desk).walls).toHaveLength(5);
  });

  it("shows the run before it is ended, with the wall to where the pencil is held", () => {
    const desk = createDesk("ft-in");
    desk.getState().take({ kind: "walls", corners: [] });
    press(desk, [-12, 1]);
    hold(desk, [-10, 12]);
    expect(shownPlan(desk).walls).toHaveLength(1);
    expect(planOf(desk).walls).toHaveLength(0);
    desk.getState().setAim(null);
    expect(shownPlan(desk).walls).toHaveLength(0);
  });

  it("takes the last corner back, also by undo, and puts the pencil down when none is left", () => {
    const desk = createDesk("ft-in");
    desk.getState().take({ kind: "walls", corners: [] });
    press(desk, [-12, 1]);
    press(desk, [-10, 12]);
    desk.getState().backOut();
    expect(desk.getState().hand).toMatchObject({ kind: "walls", corners: [[-12 * FOOT_M, FOOT_M]] });
    desk.getState().undo();
    expect(desk.getState().hand).toMatchObject({ kind: "walls", corners: [] });
    desk.getState().backOut();
    expect(desk.getState().hand.kind).toBe("choose");
    expect(desk.getState().history.past).toHaveLength(0);
  });

  it("closes a run that comes back to its first corner", () => {
    const desk = createDesk("ft-in");
    drawWalls(desk, [
      [-4, 4],
      [-4, 10],
      [4, 10],
      [-4, 4],
    ]);
    expect(planOf(desk).walls.map(({ from, to }) => from + to)).toEqual(["AB", "BC", "CA"]);
  });

  it("goes on from a corner that is there", () => {
    const desk = createDesk("ft-in");
    drawWalls(desk, [
      [-4, 4],
      [-4, 10],
    ]);
    drawWalls(desk, [
      [-4, 10],
      [4, 10],
    ]);
    expect(planOf(desk).walls.map(({ from, to }) => from + to)).toEqual(["AB", "BC"]);
  });

  it("builds a platform, a stair, furniture, a column and masking where they are set down", () => {
    const desk = createDesk("m");
    const { take, end } = desk.getState();
    take({ kind: "platform", corners: [] });
    for (const at of [
      [-6, 8],
      [2, 8],
      [2, 14],
    ] as const)
      press(desk, at);
    end();
    take({ kind: "line", draws: "stair", from: null });
    press(desk, [-4, 5]);
    press(desk, [2, 5]);
    take({ kind: "put", puts: "furniture" });
    press(desk, [7, 6]);
    take({ kind: "put", puts: "column" });
    press(desk, [9, 9]);
    take({ kind: "line", draws: "border", from: null });
    press(desk, [-16, 4]);
    press(desk, [16, 4]);
    const plan = planOf(desk);
    expect(plan.platforms[0]?.outline).toHaveLength(3);
    expect(plan.stairs[0]).toMatchObject({ steps: 3, riser: 0.15, tread: 0.3 });
    expect(plan.furniture[0]).toMatchObject({ kind: "table", turn: 0 });
    expect(plan.columns).toHaveLength(1);
    expect(plan.masking[0]).toMatchObject({ kind: "border", trim: 4.9, height: 1.85 });
    expect(desk.getState().history.past).toHaveLength(5);
  });

  it("puts an opening into a wall where it is held along it", () => {
    const desk = createDesk("ft-in");
    drawWalls(desk);
    desk.getState().take({ kind: "opening" });
    desk.getState().setAim({ kind: "on-wall", wall: "W3", at: 2 * FOOT_M });
    expect(shownPlan(desk).walls[2]?.openings).toHaveLength(1);
    desk.getState().setDown();
    expect(planOf(desk).walls[2]?.openings).toMatchObject([{ id: "door", kind: "door", at: 2 * FOOT_M }]);
  });

  it("keeps what is chosen under its new name, and lets go of what is gone", () => {
    const desk = createDesk("ft-in");
    drawWalls(desk);
    desk.getState().choose([{ kind: "wall", id: "W2" }]);
    desk.getState().apply({ edit: "change-wall", id: "W2", change: { id: "north" } });
    expect(desk.getState().chosen).toEqual([{ kind: "wall", id: "north" }]);
    desk.getState().apply({ edit: "take-away", things: [{ kind: "wall", id: "north" }] });
    expect(desk.getState().chosen).toEqual([]);
  });

  it("says why an edit cannot be made, and changes nothing", () => {
    const desk = createDesk("ft-in");
    drawWalls(desk);
    const before = desk.getState().history;
    expect(desk.getState().apply({ edit: "rename-corner", id: "A", to: "B" })).toMatchObject({ ok: false });
    expect(desk.getState().trouble).toContain('"B" is the name of something else already.');
    expect(desk.getState().history).toBe(before);
  });

  it("shows a drag without making it", () => {
    const desk = createDesk("ft-in");
    drawWalls(desk);
    desk.getState().tryOut({ edit: "move-corner", id: "A", to: [-4, 0] });
    expect(shownPlan(desk).corners.get("A")).toEqual([-4, 0]);
    desk.getState().tryOut(null);
    expect(shownPlan(desk).corners.get("A")).toEqual([-12 * FOOT_M, FOOT_M]);
    expect(desk.getState().history.past).toHaveLength(1);
  });
});
