import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { keepOrder, moveMark, putPoint, TAKE_ORDER } from "@/lib/draft/exercise-desk/ask";
import { askablePoints, type PointUse } from "@/lib/draft/exercise-desk/askable-points";
import { newDraft } from "@/lib/draft/new-draft";
import { seeded } from "../../seeded";
import { edited, fiveWalls } from "../edits/five-walls";

const names = (draft: ReturnType<typeof fiveWalls>) =>
  askablePoints(draft.exercise).flatMap(({ points }) => points.map(({ point, use }) => `${point.name} ${use}`));

describe("the points that can be asked", () => {
  it("are none on an empty stage", () => {
    expect(askablePoints(newDraft("m").exercise)).toEqual([]);
  });

  it("stand with their thing, in the plan's order", () => {
    const groups = askablePoints(fiveWalls().exercise);
    expect(groups.map(({ thing }) => thing.kind)).toContain("opening");
    for (const { thing, points } of groups)
      for (const { point } of points)
        expect(point.name.startsWith(thing.kind === "opening" ? `${thing.wall}.${thing.id}.` : `${thing.id}.`)).toBe(
          true,
        );
  });

  it("are those of the worked-out order, all asked until the author says otherwise", () => {
    const draft = fiveWalls();
    expect(names(draft).toSorted()).toEqual(draft.exercise.task.marks.map((name) => `${name} asked`).toSorted());
  });

  it("of a plan to be read back are on the floor", () => {
    const draft = edited(fiveWalls(), { edit: "set-task", task: { kind: "picture-to-plan" } });
    const listed = names(draft);
    expect(listed.length).toBeGreaterThan(4);
    for (const name of listed) expect(name).toMatch(/\.(foot|sill) asked$/);
  });

  it("include what the author asks for although it is outside the frame", () => {
    const outside = edited(newDraft("m"), { edit: "add-point", at: [-40, 1] });
    expect(names(outside)).toEqual([]);
    expect(names(edited(outside, putPoint(outside.exercise.task, "A.foot", "asked")))).toEqual(["A.foot asked"]);
  });
});

describe("what is asked of a point", () => {
  it("is what was chosen last, whatever it was before and whoever orders the marks", () => {
    const uses = fc.array(fc.tuple(fc.nat(), fc.constantFrom<PointUse>("asked", "given", "free")), { maxLength: 12 });
    fc.assert(
      fc.property(uses, fc.boolean(), (changes, byAuthor) => {
        const start = fiveWalls();
        const marks = start.exercise.task.marks;
        let draft = byAuthor ? edited(start, keepOrder(start.exercise.task)) : start;
        for (const [at, use] of changes) {
          const name = marks[at % marks.length] as string;
          draft = edited(draft, putPoint(draft.exercise.task, name, use));
          expect(names(draft)).toContain(`${name} ${use}`);
          expect(names(draft)).toHaveLength(marks.length);
        }
      }),
      { ...seeded, numRuns: 40 },
    );
  });

  it("leaves an order that is worked out when a point is given, and is the author's otherwise", () => {
    const draft = fiveWalls();
    const [first = ""] = draft.exercise.task.marks;
    expect(edited(draft, putPoint(draft.exercise.task, first, "given")).marksBy).toBe("order");
    const fewer = edited(draft, putPoint(draft.exercise.task, first, "free"));
    expect(fewer.marksBy).toBe("author");
    expect(edited(fewer, TAKE_ORDER).exercise.task.marks).toEqual(draft.exercise.task.marks);
    expect(edited(draft, keepOrder(draft.exercise.task))).toEqual({ ...draft, marksBy: "author" });
  });
});

describe("the order of the marks", () => {
  const task = { marks: ["A.foot", "B.foot", "C.foot", "D.foot"], given: [] };
  it.each([
    ["B.foot", 1, ["A.foot", "C.foot", "B.foot", "D.foot"]],
    ["B.foot", -1, ["B.foot", "A.foot", "C.foot", "D.foot"]],
    ["B.foot", 99, ["A.foot", "C.foot", "D.foot", "B.foot"]],
    ["D.foot", -99, ["D.foot", "A.foot", "B.foot", "C.foot"]],
  ])("moves %s by %i places", (name, by, marks) => {
    expect(moveMark(task, name, by)).toEqual({ edit: "set-task", task: { marks } });
  });
  it.each([
    ["A.foot", -1],
    ["D.foot", 1],
    ["B.foot", 0],
    ["Z.foot", 1],
  ])("has nothing to move %s by %i", (name, by) => {
    expect(moveMark(task, name, by)).toBeNull();
  });
});
