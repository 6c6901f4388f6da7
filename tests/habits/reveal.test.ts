import { describe, expect, it } from "vitest";
import { exercisePoints } from "@/lib/exercise/exercise-points";
import { perfectMarks, revealedHabits, revealedWays } from "@/lib/habits/reveal";
import { house } from "./house";

const plan = {
  corners: { A: [3, 1], B: [2, 5], C: [-2.5, 4], D: [-3.5, 1] },
  walls: [
    { id: "W1", from: "A", to: "B", height: 3 },
    { id: "W2", from: "B", to: "C", height: 3 },
    { id: "W3", from: "C", to: "D", height: 3 },
  ],
};
const tops = ["A.top", "B.top", "C.top", "D.top"];
const feet = ["A.foot", "B.foot", "C.foot", "D.foot"];

describe("the habits an exercise can reveal", () => {
  it("are those of what it asks: feet, or tops over feet that are given", () => {
    const ofFeet = revealedHabits(house({ plan, task: { marks: feet } }));
    expect(ofFeet).toEqual(expect.arrayContaining(["wrong-side", "full-width", "square-wall"]));
    for (const id of ["full-height", "parallel-top", "level-top"]) expect(ofFeet).not.toContain(id);
    const ofTops = revealedHabits(house({ plan, task: { given: feet, marks: tops } }));
    expect(ofTops).toContain("full-height");
    for (const id of ["wrong-side", "full-width", "square-wall"]) expect(ofTops).not.toContain(id);
  });

  it("need two marks that show them", () => {
    const once = house({ plan, task: { given: feet.slice(1), marks: ["A.foot"] } });
    expect(revealedHabits(once)).toEqual([]);
  });

  it("are none of places on the plaster line, but the wrong place along it", () => {
    const line = { corners: { P: [1, 0], Q: [-3, 0], R: [2.5, 0] } };
    const ids = revealedHabits(house({ plan: line, task: { marks: ["P.foot", "Q.foot", "R.foot"] } }));
    expect(ids).toContain("wrong-side");
    for (const id of ["plan-depth", "too-deep", "too-shallow", "full-width"]) expect(ids).not.toContain(id);
  });

  it("count no top over a foot of the student's own that the habit has moved already", () => {
    // foot and top of the far ends of two raking walls: drawn to the wrong point both, such a wall is right over its foot
    const marks = ["B.foot", "B.top", "C.foot", "C.top"];
    const borrowed = (goOnFrom: string) =>
      revealedWays(house({ plan, task: { goOnFrom, given: ["A.foot", "A.top", "D.foot", "D.top"], marks } })).filter(
        ({ id }) => id === "borrowed-vanishing-point",
      );
    const atTops = (goOnFrom: string) => borrowed(goOnFrom).flatMap(({ places }) => [places[1], places[3]]);
    expect(atTops("true").some((place) => place !== null)).toBe(true);
    expect(borrowed("own").length).toBeGreaterThan(0);
    expect(atTops("own").every((place) => place === null)).toBe(true);
  });
});

describe("perfect marks", () => {
  it("lie at the true place of each asked point, in order, with what is allowed there", () => {
    const exercise = house({ plan, task: { marks: ["B.foot", "B.top"] } });
    const marks = perfectMarks(exercise, exercisePoints(exercise));
    expect(marks.map(({ point }) => point.name)).toEqual(["B.foot", "B.top"]);
    // (2, 5): s = 8/13
    for (const { mark, target, toleranceMm } of marks) {
      expect(mark).toEqual(target);
      expect(mark[0]).toBeCloseTo(16 / 13, 12);
      expect(toleranceMm).toBeGreaterThanOrEqual(1);
    }
    expect(marks[0]?.mark[1]).toBeCloseTo(2 - 16 / 13, 12);
  });
});
