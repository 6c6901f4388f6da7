import { describe, expect, it } from "vitest";
import { newDraft } from "@/lib/draft/new-draft";
import { edited, fiveWalls, madeBy, planEdited, refusal } from "./five-walls";

const wall = (corners: readonly (readonly [number, number] | string)[], closed = false) =>
  ({ edit: "add-walls", corners, closed, height: 4, thickness: 0 }) as const;

describe("add-walls", () => {
  it("names corners A, B, C and walls W1, W2, onstage to the right of the run", () => {
    const { plan } = fiveWalls().exercise;
    expect([...plan.corners.keys()]).toEqual(["A", "B", "C", "D", "E", "F"]);
    expect(plan.walls.map(({ id, from, to, onstage }) => [id, from, to, onstage])).toEqual([
      ["W1", "A", "B", "right"],
      ["W2", "B", "C", "right"],
      ["W3", "C", "D", "right"],
      ["W4", "D", "E", "right"],
      ["W5", "E", "F", "right"],
    ]);
  });

  it("goes on from a corner by name, and takes the corner that stands at a place", () => {
    const plan = planEdited(
      fiveWalls(),
      wall(["F", [6, 1], [6, 3]]),
      wall([
        [3, 5],
        [3, 7],
      ]),
    );
    expect(plan.walls.slice(5).map(({ from, to }) => from + to)).toEqual(["FG", "GH", "DI"]);
  });

  it("closes a run, by word or by coming back to its first place", () => {
    const square: readonly (readonly [number, number])[] = [
      [0, 1],
      [0, 2],
      [1, 2],
      [1, 1],
    ];
    const ends = (plan: ReturnType<typeof planEdited>) => plan.walls.map(({ from, to }) => from + to);
    expect(ends(planEdited(newDraft("m"), wall(square, true)))).toEqual(["AB", "BC", "CD", "DA"]);
    expect(ends(planEdited(newDraft("m"), wall([...square, [0, 1]])))).toEqual(["AB", "BC", "CD", "DA"]);
  });

  it("fills a gap that a corner's or a wall's going left in the names, and takes none twice", () => {
    const plan = planEdited(
      fiveWalls(),
      { edit: "take-away", things: [{ kind: "corner", id: "C" }] },
      { edit: "rename-corner", id: "A", to: "W2" },
      wall([
        [0, 6],
        [1, 6],
        [2, 6],
      ]),
    );
    expect([...plan.corners.keys()]).toEqual(["W2", "B", "D", "E", "F", "A", "C", "G"]);
    expect(plan.walls.map(({ id }) => id)).toEqual(["W1", "W4", "W5", "W3", "W6"]);
  });

  it("goes on to AA after Z", () => {
    const run = Array.from({ length: 28 }, (_, i) => [i, 1] as const);
    expect([...planEdited(newDraft("m"), wall(run)).corners.keys()].slice(24)).toEqual(["Y", "Z", "AA", "AB"]);
  });

  it.each([
    { edit: wall([[0, 1]]), say: "A wall needs two corners." },
    { edit: wall(["Z", [0, 1]]), say: 'There is no corner "Z" on this plan.' },
    { edit: wall(["A", "B"]), say: "There is a wall between A and B already." },
    { edit: wall(["A", "A"]), say: "Two corners of the run, at A, are one place." },
    {
      edit: wall([
        [0, 1],
        [0, Number.NaN],
      ]),
      say: "A figure is missing, or is no number.",
    },
    {
      edit: wall([
        [0, 1],
        [0, 1001],
      ]),
      say: "That is more than 1 km. Check its unit.",
    },
    { edit: { ...wall(["A", "C"]), height: 0 }, say: "A wall needs a height above 0." },
  ])("says why not: $say", ({ edit, say }) => {
    expect(refusal(fiveWalls(), edit)).toBe(say);
  });
});

describe("set-wall-length", () => {
  it("moves the far corner along, and the next wall's end with it", () => {
    const plan = planEdited(fiveWalls(), { edit: "set-wall-length", id: "W3", length: 4 });
    expect(plan.corners.get("C")).toEqual([-3, 5]);
    expect(plan.corners.get("D")).toEqual([1, 5]);
  });

  it("turns the wall to an angle", () => {
    const plan = planEdited(fiveWalls(), { edit: "set-wall-length", id: "W1", length: 2, angle: Math.PI / 2 });
    expect(plan.corners.get("B")).toEqual([-5, 3]);
  });

  it("needs a direction", () => {
    const flat = edited(fiveWalls(), { edit: "move-corner", id: "B", to: [-5, 1] });
    expect(refusal(flat, { edit: "set-wall-length", id: "W1", length: 2 })).toMatch(/no direction yet/);
    expect(refusal(flat, { edit: "set-wall-length", id: "W1", length: 0 })).toMatch(/above 0/);
  });
});

describe("split-wall", () => {
  it("puts a corner between two halves; openings beyond it go with the second, and their marks", () => {
    const asked = edited(fiveWalls(), {
      edit: "set-task",
      task: { marks: ["W3.window.start.sill", "D.top"], given: [] },
    });
    const draft = edited(asked, { edit: "split-wall", id: "W3", at: 2 });
    const { plan, task } = draft.exercise;
    expect(plan.corners.get("G")).toEqual([-1, 5]);
    expect(plan.walls.map(({ id, from, to }) => id + from + to)).toEqual([
      "W1AB",
      "W2BC",
      "W3CG",
      "W6GD",
      "W4DE",
      "W5EF",
    ]);
    expect(plan.walls[3]?.openings).toMatchObject([{ id: "window", at: 2 }]);
    expect(task.marks).toEqual(["W6.window.start.sill", "D.top"]);
  });

  it("does not cut an opening", () => {
    expect(refusal(fiveWalls(), { edit: "split-wall", id: "W3", at: 4.5 })).toBe(
      '"window" stands there. Slide it aside, or split the wall elsewhere.',
    );
    expect(refusal(fiveWalls(), { edit: "split-wall", id: "W3", at: 6 })).toBe("Split a wall between its ends.");
  });
});

describe("take-away", () => {
  it("of a corner takes its walls, their openings and the corners nobody uses any more", () => {
    const plan = planEdited(fiveWalls(), { edit: "take-away", things: [{ kind: "corner", id: "B" }] });
    expect([...plan.corners.keys()]).toEqual(["C", "D", "E", "F"]);
    expect(plan.walls.map(({ id }) => id)).toEqual(["W3", "W4", "W5"]);
  });

  it("of a wall leaves the corners that others use, and plain points", () => {
    const draft = edited(fiveWalls(), { edit: "add-point", at: [0, 2] });
    const plan = planEdited(draft, { edit: "take-away", things: [{ kind: "wall", id: "W1" }] });
    expect([...plan.corners.keys()]).toEqual(["B", "C", "D", "E", "F", "G"]);
  });

  it("takes the marks and given points of what is gone", () => {
    const asked = edited(fiveWalls(), {
      edit: "set-task",
      task: { marks: ["C.foot", "W2.door.end.sill", "D.foot"], given: ["B.foot", "E.foot"] },
    });
    const gone = edited(asked, { edit: "take-away", things: [{ kind: "corner", id: "B" }] });
    expect(gone.exercise.task).toMatchObject({ marks: ["C.foot", "D.foot"], given: ["E.foot"] });
  });

  it("refuses what is not there, and then takes nothing", () => {
    const things = [
      { kind: "wall", id: "W1" },
      { kind: "opening", wall: "W1", id: "door" },
    ] as const;
    expect(refusal(fiveWalls(), { edit: "take-away", things })).toBe('There is no opening "door" in wall "W1".');
  });
});

describe("names", () => {
  const asked = () =>
    edited(fiveWalls(), {
      edit: "set-task",
      task: { marks: ["B.foot", "B.top", "W2.door.start.head"], given: ["C.foot"] },
    });

  it("that change are followed by walls, marks and given points", () => {
    const draft = edited(
      asked(),
      { edit: "rename-corner", id: "B", to: "Q" },
      { edit: "rename-corner", id: "C", to: "2" },
      { edit: "change-wall", id: "W2", change: { id: "raking" } },
      { edit: "change-opening", wall: "raking", id: "door", change: { id: "entry" } },
    );
    const { plan, task } = draft.exercise;
    expect(plan.walls.slice(0, 2)).toMatchObject([{ to: "Q" }, { id: "raking", from: "Q", to: "2" }]);
    expect(task.marks).toEqual(["Q.foot", "Q.top", "raking.entry.start.head"]);
    expect(task.given).toEqual(["2.foot"]);
  });

  it.each([
    ["C", '"C" is the name of something else already.'],
    ["W1", '"W1" is the name of something else already.'],
    ["a b", '"a b" cannot be a name. Use letters, digits, - and _, beginning with a letter or digit, at most 64.'],
    ["constructor", '"constructor" cannot be a name. Choose another.'],
  ])("%s is refused", (to, say) => {
    expect(refusal(asked(), { edit: "rename-corner", id: "B", to })).toBe(say);
    expect(refusal(asked(), { edit: "change-wall", id: "W2", change: { id: to } })).toBe(say);
  });

  it("of a corner's top splits by wall as heights part, and is one again as they meet", () => {
    const parted = edited(asked(), { edit: "change-wall", id: "W1", change: { height: 3 } });
    expect(parted.exercise.task.marks).toEqual(["B.foot", "B.top.W1", "B.top.W2", "W2.door.start.head"]);
    const renamed = edited(parted, { edit: "change-wall", id: "W1", change: { id: "return" } });
    expect(renamed.exercise.task.marks).toEqual(["B.foot", "B.top.return", "B.top.W2", "W2.door.start.head"]);
    const level = edited(renamed, { edit: "change-wall", id: "return", change: { height: 4 } });
    expect(level.exercise.task.marks).toEqual(["B.foot", "B.top", "W2.door.start.head"]);
  });

  it("of things are given by their kind", () => {
    const bed = { kind: "bed", at: [0, 2], turn: 0, width: 1, depth: 2, height: 0.5, base: 0 } as const;
    const draft = edited(
      asked(),
      { edit: "add-furniture", furniture: bed },
      { edit: "add-furniture", furniture: bed },
      { edit: "add-column", column: { at: [2, 2], diameter: 0.2, height: 3, base: 0 } },
    );
    expect(draft.exercise.plan.furniture.map(({ id }) => id)).toEqual(["bed", "bed2"]);
    expect(madeBy(draft, { edit: "add-column", column: { at: [1, 2], diameter: 0.2, height: 3, base: 0 } })).toEqual([
      { kind: "column", id: "K2" },
    ]);
  });
});
