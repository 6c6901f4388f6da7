import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type MarkPlace, markPlaceAt, markPlaces } from "@/lib/draft/exercise-desk/mark-places";
import { ASK_NOTHING, putPlace, USE_AFTER } from "@/lib/draft/exercise-desk/press-place";
import { project } from "@/lib/perspective/project";
import { seeded } from "../../seeded";
import { edited, fiveWalls } from "../edits/five-walls";

const asked = edited(fiveWalls(), ASK_NOTHING);

function placeOf(name: string, draft = asked, plane: "plan" | "picture" = "plan"): MarkPlace {
  const place = markPlaces(draft.exercise, plane).find(({ names }) => names.includes(name));
  if (!place) throw new Error(`${name} has no place.`);
  return place;
}

describe("places of points", () => {
  it("are foot and top together on the plan, and apart in the picture, where they are seen", () => {
    expect(placeOf("C.top")).toMatchObject({ names: ["C.foot", "C.top"], at: [-3, 5], numbers: [], use: "free" });
    const top = placeOf("C.top", asked, "picture");
    expect(top.names).toEqual(["C.top"]);
    const seen = project(asked.exercise.viewer, [-3, 5, 4]);
    expect(seen.seen && top.at).toEqual(seen.seen && [seen.at[0], seen.at[1]]);
  });

  it("are floor points alone where the plan is read back", () => {
    const reading = edited(asked, { edit: "set-task", task: { kind: "picture-to-plan" } });
    expect(placeOf("C.foot", reading).names).toEqual(["C.foot"]);
  });

  it("are found within reach, the nearest", () => {
    const places = markPlaces(asked.exercise, "plan");
    expect(markPlaceAt(places, [-3.1, 5.05], 0.3)?.names).toEqual(["C.foot", "C.top"]);
    expect(markPlaceAt(places, [0, 2], 0.3)).toBeNull();
  });
});

describe("a press", () => {
  it("asks next, gives, and leaves out, in turn", () => {
    let draft = asked;
    const press = (name: string) => {
      const place = placeOf(name, draft);
      draft = edited(draft, putPlace(draft.exercise.task, place, USE_AFTER[place.use]));
    };
    press("D.foot");
    press("C.foot");
    expect(draft.exercise.task.marks).toEqual(["D.foot", "D.top", "C.foot", "C.top"]);
    expect(placeOf("C.foot", draft).numbers).toEqual([3, 4]);
    press("D.foot");
    expect(draft.exercise.task).toMatchObject({ marks: ["C.foot", "C.top"], given: ["D.foot", "D.top"] });
    press("D.foot");
    expect(draft.exercise.task).toMatchObject({ marks: ["C.foot", "C.top"], given: [] });
    expect(draft.marksBy).toBe("author");
  });

  it("in any order leaves every point asked once, or given, or neither", () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(fc.nat(), fc.constantFrom("plan", "picture")), { maxLength: 20 }), (presses) => {
        let draft = asked;
        for (const [n, plane] of presses) {
          const places = markPlaces(draft.exercise, plane as "plan" | "picture");
          const place = places[n % places.length] as MarkPlace;
          const use = USE_AFTER[place.use];
          draft = edited(draft, putPlace(draft.exercise.task, place, use));
          const { marks, given } = draft.exercise.task;
          expect(new Set([...marks, ...given]).size).toBe(marks.length + given.length);
          const now = markPlaces(draft.exercise, plane as "plan" | "picture").find(
            ({ names }) => names[0] === place.names[0],
          );
          expect(now?.use).toBe(use);
          if (use === "asked") expect(marks.slice(-place.names.length)).toEqual(place.names);
        }
      }),
      seeded,
    );
  });
});
