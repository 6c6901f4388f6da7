import { describe, expect, it } from "vitest";
import { cornerEntries } from "@/app/demonstrate/[id]/corner-entries";
import { createDemonstration } from "@/app/demonstrate/[id]/demonstration-store";
import { demonstrationSteps } from "@/lib/drawing/demonstration/demonstration-steps";
import { readTideOffice } from "../../fixtures/tide-office";

const steps = demonstrationSteps(readTideOffice(["/task", { kind: "plan-to-picture", marks: ["A.foot", "A.top"] }]));
const indexOf = (point: string, kind: string) => steps.findIndex((step) => step.point === point && step.kind === kind);

describe("a demonstration under way", () => {
  it("goes on and back, and stops at either end", () => {
    const store = createDemonstration(steps);
    store.getState().back();
    expect(store.getState().at).toBe(0);
    for (let i = 0; i < steps.length + 3; i++) store.getState().on();
    expect(store.getState().at).toBe(steps.length - 1);
    store.getState().back();
    expect(store.getState().at).toBe(steps.length - 2);
  });

  it.each([
    [-5, 0],
    [2.9, 2],
    [Number.NaN, 0],
    [1e9, steps.length - 1],
  ])("goes to step %d as %d, whatever an address says", (asked, at) => {
    const store = createDemonstration(steps);
    store.getState().go(asked);
    expect(store.getState().at).toBe(at);
  });

  it("lights a blank screen again before it goes on, so that no step is missed", () => {
    const store = createDemonstration(steps);
    store.getState().setBlank(true);
    store.getState().on();
    expect(store.getState()).toMatchObject({ at: 0, blank: false });
    store.getState().setBlank(true);
    store.getState().back();
    expect(store.getState()).toMatchObject({ at: 0, blank: false });
  });

  it("waits at the place of a point, takes guesses, and shows the true point before it goes on", () => {
    const store = createDemonstration(steps);
    const place = indexOf("A.foot", "place");
    store.getState().go(place);
    store.getState().letTry();
    store.getState().guess([1, 1], "");
    store.getState().guess([2, 1], "MK");
    expect(store.getState().guesses.map(({ label }) => label)).toEqual(["1", "MK"]);
    store.getState().on();
    expect(store.getState()).toMatchObject({ at: place, trying: "shown" });
    store.getState().guess([3, 1], "late");
    expect(store.getState().guesses).toHaveLength(2);
    store.getState().on();
    expect(store.getState()).toMatchObject({ at: place + 1, trying: "no", guesses: [] });
  });

  it("goes back to where a point is asked when the step on the sheet gives it away", () => {
    for (const kind of ["set-down", "line"]) {
      const store = createDemonstration(steps);
      store.getState().go(kind === "line" ? indexOf("A.foot", "set-down") - 1 : indexOf("A.foot", "set-down"));
      store.getState().letTry();
      expect(store.getState()).toMatchObject({ at: indexOf("A.foot", "place"), trying: "waiting" });
    }
  });

  it("keeps the lines already drawn while they leave the point open, and asks the first point from the empty sheet", () => {
    const store = createDemonstration(steps);
    store.getState().go(indexOf("A.top", "line"));
    store.getState().letTry();
    expect(store.getState().at).toBe(indexOf("A.top", "line"));
    store.getState().go(0);
    store.getState().letTry();
    expect(store.getState().at).toBe(indexOf("A.foot", "place"));
    store.getState().go(steps.length - 1);
    store.getState().letTry();
    expect(store.getState()).toMatchObject({ at: steps.length - 1, trying: "no" });
  });

  it("keeps pencil lines with the step they were drawn at, and rubs out the last of it or all of it", () => {
    const store = createDemonstration(steps);
    const { setPencil, begin, draw, go, rubOut } = store.getState();
    begin("picture", [0, 0]);
    expect(store.getState().lines).toEqual([]);
    setPencil("red");
    begin("picture", [0, 0]);
    draw([1, 1]);
    begin("plan", [2, 2]);
    go(3);
    setPencil("blue");
    begin("picture", [5, 5]);
    rubOut("all");
    expect(store.getState().lines.map(({ step, colour }) => [step, colour])).toEqual([
      [0, "red"],
      [0, "red"],
    ]);
    go(0);
    rubOut("last");
    expect(store.getState().lines.map(({ points }) => points)).toEqual([
      [
        [0, 0],
        [1, 1],
      ],
    ]);
  });

  it("puts away one thing at a time: a card, the blank, the pencil, the guesses", () => {
    const store = createDemonstration(steps);
    store.getState().letTry();
    store.getState().setPencil("red");
    store.getState().setBlank(true);
    store.getState().setCard("keys");
    const shown = () => {
      const { card, blank, pencil, trying } = store.getState();
      return [card, blank, pencil, trying];
    };
    store.getState().putAway();
    expect(shown()).toEqual([null, true, "red", "waiting"]);
    store.getState().putAway();
    expect(shown()).toEqual([null, false, "red", "waiting"]);
    store.getState().putAway();
    expect(shown()).toEqual([null, false, null, "waiting"]);
    store.getState().putAway();
    expect(shown()).toEqual([null, false, null, "no"]);
  });
});

describe("the list of corners", () => {
  it("leads to the sheet, to each mark where it begins, and to the end", () => {
    expect(cornerEntries(steps).map(({ title }) => title)).toEqual([
      "The empty sheet",
      "The foot of A",
      "The top of A",
      "The finished picture",
    ]);
    for (const { number } of cornerEntries(steps).slice(1, -1)) expect(steps[number - 1]?.kind).toBe("place");
  });
});
