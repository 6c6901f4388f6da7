import { describe, expect, it } from "vitest";
import type { Draft } from "@/lib/draft/draft";
import { project } from "@/lib/perspective/project";
import { onFloor } from "@/lib/stage/stage";
import { edited, fiveWalls, refusal } from "./five-walls";

/** Where the picture shows the foot of the back wall. */
function backWallFoot({ exercise: { stage, viewer } }: Draft): number {
  const seen = project(viewer, onFloor(stage, [0, stage.depth]));
  return seen.seen ? seen.at[1] : Number.NaN;
}

describe("the eye set by the back wall's foot", () => {
  const set = () => edited(fiveWalls(), { edit: "set-back-wall-rise", rise: 1 });

  it("shows the foot there", () => {
    expect(set().backWallRise).toBe(1);
    expect(backWallFoot(set())).toBeCloseTo(1, 12);
  });

  it("goes on showing it there as the stage or the eye's height changes", () => {
    const { stage, viewer } = set().exercise;
    expect(backWallFoot(edited(set(), { edit: "set-stage", stage: { ...stage, depth: 10, rake: 0.02 } }))).toBeCloseTo(
      1,
      12,
    );
    expect(backWallFoot(edited(set(), { edit: "set-viewer", viewer: { ...viewer, eyeHeight: 3 } }))).toBeCloseTo(1, 12);
  });

  it("is let go of by a distance of its own, or by word, which leaves the eye where it is", () => {
    const { viewer } = set().exercise;
    const moved = edited(set(), { edit: "set-viewer", viewer: { ...viewer, distance: 20 } });
    expect([moved.backWallRise, moved.exercise.viewer.distance]).toEqual([null, 20]);
    const free = edited(set(), { edit: "set-back-wall-rise", rise: null });
    expect([free.backWallRise, free.exercise.viewer]).toEqual([null, viewer]);
  });

  it("cannot be above the eye or under the floor", () => {
    const say = /No eye shows the back wall's foot 3000 mm up: .* below the eye \(2400 mm\)/;
    expect(refusal(fiveWalls(), { edit: "set-back-wall-rise", rise: 3 })).toMatch(say);
    expect(refusal(set(), { edit: "set-viewer", viewer: { ...set().exercise.viewer, eyeHeight: 0.9 } })).toMatch(
      /No eye/,
    );
  });
});

describe("the sheet", () => {
  it("takes the scales of an architect's rule and one to anything", () => {
    const sheet = edited(fiveWalls(), { edit: "set-sheet", units: "ft-in", scale: "1/2in=1ft" }).exercise;
    expect([sheet.units, sheet.scaleRatio]).toEqual(["ft-in", 24]);
    expect(refusal(fiveWalls(), { edit: "set-sheet", units: "m", scale: "1:0" })).toMatch(/"1:0" is not a scale/);
    expect(refusal(fiveWalls(), { edit: "set-sheet", units: "m", scale: "7/8in=1ft" })).toMatch(/is not a scale/);
  });
});

describe("the task", () => {
  it("works its marks out anew with every change until the author lists them", () => {
    const first = fiveWalls();
    expect(first.exercise.task.marks).toContain("W2.door.start.sill");
    const listed = edited(first, { edit: "set-task", task: { marks: ["C.foot", "B.foot"] } });
    expect([listed.marksBy, listed.exercise.task.marks]).toEqual(["author", ["C.foot", "B.foot"]]);
    const moved = edited(listed, { edit: "move-corner", id: "B", to: [-4, 2] });
    expect(moved.exercise.task.marks).toEqual(["C.foot", "B.foot"]);
    const back = edited(moved, { edit: "set-task", task: {}, marksBy: "order" });
    expect(back.exercise.task.marks.length).toBe(first.exercise.task.marks.length);
  });

  it("asks for a point or gives it, not both: the new word holds", () => {
    const given = edited(fiveWalls(), { edit: "set-task", task: { given: ["B.foot", "C.foot"] } });
    expect(given.exercise.task.marks).not.toContain("B.foot");
    const asked = edited(given, { edit: "set-task", task: { marks: ["B.foot", "D.foot"] } });
    expect(asked.exercise.task).toMatchObject({ marks: ["B.foot", "D.foot"], given: ["C.foot"] });
    const turned = edited(asked, { edit: "set-task", task: { given: ["D.foot"] } });
    expect(turned.exercise.task).toMatchObject({ marks: ["B.foot"], given: ["D.foot"] });
  });

  it("leaves out names of no point, and names written twice", () => {
    const task = { marks: ["B.foot", "Z.foot", "B.foot"], given: ["Y.foot"] };
    const draft = edited(fiveWalls(), { edit: "set-task", task });
    expect(draft.exercise.task).toMatchObject({ marks: ["B.foot"], given: [] });
  });

  it("reads back only places on the floor", () => {
    const draft = edited(fiveWalls(), { edit: "set-task", task: { kind: "picture-to-plan" } });
    expect(draft.exercise.task.marks.filter((name) => name.endsWith(".top"))).toEqual([]);
  });
});

describe("the words", () => {
  it("change, within what a file may hold", () => {
    const draft = edited(fiveWalls(), {
      edit: "set-words",
      words: { id: "ferry-house", title: "Ferry house", level: 3 },
    });
    expect(draft.exercise).toMatchObject({ id: "ferry-house", title: "Ferry house", level: 3 });
    expect(refusal(draft, { edit: "set-words", words: { level: 6 } })).toBe("A level is 1 to 5.");
    expect(refusal(draft, { edit: "set-words", words: { id: "ferry house" } })).toMatch(/cannot be a name/);
    expect(refusal(draft, { edit: "set-words", words: { brief: "a".repeat(10_001) } })).toMatch(/10,000 letters/);
  });
});
