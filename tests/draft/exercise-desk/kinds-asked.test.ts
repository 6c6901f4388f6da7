import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { putPoint } from "@/lib/draft/exercise-desk/ask";
import { askKind, kindsAsked } from "@/lib/draft/exercise-desk/kinds-asked";
import { newDraft } from "@/lib/draft/new-draft";
import { seeded } from "../../seeded";
import { edited, fiveWalls } from "../edits/five-walls";

/** Five walls, and a platform whose upstage edge lies in the corners C and D of the walls. */
function withPlatform() {
  const outline = [
    [-3, 3],
    [3, 3],
    [3, 5],
    [-3, 5],
  ] as const;
  return edited(fiveWalls(), { edit: "add-platform", platform: { outline, height: 0.3, base: 0 } });
}

const counts = (draft: ReturnType<typeof fiveWalls>) =>
  Object.fromEntries(kindsAsked(draft.exercise).map(({ key, used, places }) => [key, `${used} of ${places}`]));

describe("points asked by kind", () => {
  it("has no kinds on an empty stage", () => {
    expect(kindsAsked(newDraft("m").exercise)).toEqual([]);
  });

  it("counts the points of every kind, low before high", () => {
    expect(kindsAsked(fiveWalls().exercise)).toEqual([
      { key: "corner.0", words: "feet of corners", places: 6, used: 6 },
      { key: "corner.1", words: "tops of corners", places: 6, used: 6 },
      { key: "opening.0", words: "feet and sills of openings", places: 4, used: 4 },
      { key: "opening.1", words: "heads of openings", places: 4, used: 4 },
    ]);
  });

  it("asks for none of a kind, and for all of it again in the same order", () => {
    const draft = withPlatform();
    const none = edited(draft, askKind(draft.exercise, "opening.0", false));
    expect(counts(none)["opening.0"]).toBe("0 of 4");
    expect(none.exercise.task.marks).toHaveLength(draft.exercise.task.marks.length - 4);
    const again = edited(none, askKind(none.exercise, "opening.0", true));
    expect(again.exercise.task.marks).toEqual(draft.exercise.task.marks);
    expect(again.marksBy).toBe("author");
  });

  it("asks once where a platform's corner stands in a corner of the walls", () => {
    const draft = withPlatform();
    const without = edited(draft, askKind(draft.exercise, "platform.0", false));
    expect(counts(without)["platform.0"]).toBe("0 of 2");
    const asked = edited(without, askKind(without.exercise, "platform.0", true));
    expect(counts(asked)["platform.0"]).toBe("2 of 2");
    expect(asked.exercise.task.marks).not.toContain("P1.3.foot");
    const noWalls = edited(without, askKind(without.exercise, "corner.0", false));
    expect(counts(noWalls)["platform.0"]).toBe("0 of 4");
  });

  it("puts them at the end of an order of the author's own", () => {
    const draft = fiveWalls();
    const own = edited(draft, { edit: "set-task", task: { marks: ["D.foot", "A.foot"] }, marksBy: "author" });
    const { marks } = edited(own, askKind(own.exercise, "corner.1", true)).exercise.task;
    expect(marks.slice(0, 2)).toEqual(["D.foot", "A.foot"]);
    expect(marks).toHaveLength(8);
  });

  it("leaves what is given as it is", () => {
    const draft = fiveWalls();
    const given = edited(draft, putPoint(draft.exercise.task, "A.foot", "given"));
    const none = edited(given, askKind(given.exercise, "corner.0", false));
    expect(none.exercise.task.given).toEqual(["A.foot"]);
    expect(counts(none)["corner.0"]).toBe("1 of 6");
  });

  it("asks for all or for what is given alone, whatever was asked before", () => {
    const keys = kindsAsked(withPlatform().exercise).map(({ key }) => key);
    fc.assert(
      fc.property(fc.array(fc.tuple(fc.constantFrom(...keys), fc.boolean()), { maxLength: 8 }), (ticks) => {
        let draft = withPlatform();
        for (const [key, ask] of ticks) {
          draft = edited(draft, askKind(draft.exercise, key, ask));
          const kind = kindsAsked(draft.exercise).find((each) => each.key === key);
          expect(kind?.used ?? 0).toBe(ask ? (kind?.places ?? 0) : 0);
          expect(new Set(draft.exercise.task.marks).size).toBe(draft.exercise.task.marks.length);
        }
      }),
      { ...seeded, numRuns: 40 },
    );
  });
});
