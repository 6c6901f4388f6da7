import { describe, expect, it } from "vitest";
import type { Exercise } from "@/lib/exercise/exercise";
import { exercisePoints, type ProjectedPoint } from "@/lib/exercise/exercise-points";
import { nearOnRakingWall } from "@/lib/progress/near-on-wall";
import { skillsCalledOn } from "@/lib/progress/skills-called-on";
import { plainStage } from "./plain-stage";

/** What a point of an exercise calls on, the points of `placed` on the sheet, as "skill by part". */
function calls(exercise: Exercise, name: string, placed: readonly string[] = []): readonly string[] {
  const points = exercisePoints(exercise);
  const point = points.get(name) as ProjectedPoint;
  const onSheet = new Set(placed);
  const onRakingWall = nearOnRakingWall(exercise, points, point, onSheet) !== null;
  const overPlaced = point.over !== null && onSheet.has(point.over);
  return skillsCalledOn(exercise, point, { onRakingWall, overPlaced }).map(({ skill, part }) => `${skill} by ${part}`);
}

const depth = ["depth-by-eye by depth", "diagonals by depth"];
const floor = [...depth, "ray-to-cvp by across"];

describe("skillsCalledOn, of an exercise that lists no skills", () => {
  const cases: readonly (readonly [string, readonly string[], readonly string[]])[] = [
    ["A.foot", [], ["true-size by place"]],
    ["A.top", ["A.foot"], ["true-size by height", "height by height"]],
    ["B.foot", [], floor],
    ["B.foot", ["A.foot"], [...depth, "raking-wall by wall"]],
    ["B.top", ["B.foot"], ["height by height"]],
    ["B.top", ["A.top", "B.foot"], ["height by height", "raking-wall by height"]],
    ["Q.foot", [], ["apron by place"]],
    ["K.centre.foot", [], floor],
    ["K.centre.top", [], ["height by height"]],
    ["W1.door.start.sill", [], ["opening by place"]],
    ["W1.door.start.sill", ["A.foot"], ["raking-wall by wall", "opening by place"]],
    ["W1.door.start.head", ["W1.door.start.sill"], ["height by height"]],
    ["W1.door.start.head", [], ["height by height", "opening by across"]],
    ["W1.light.end.sill", ["A.foot"], ["height by height", "raking-wall by height", "opening by across"]],
    ["chest.1.foot", [], [...floor, "furniture by place"]],
    ["chest.1.top", [], ["height by height", "furniture by height"]],
    ["P.1.foot", [], [...floor, "platform by place"]],
    ["P.1.top", [], ["height by height", "platform by height"]],
    ["S.2.start", [], [...floor, "height by depth", "stairs by place"]],
    ["leg.1.foot", [], [...floor, "masking by place"]],
    ["border.1.trim", [], ["height by height", "masking by height"]],
  ];
  it.each(cases)("%s with %j on the sheet", (name, placed, expected) => {
    expect(calls(plainStage(), name, placed)).toEqual(expected);
  });

  it("adds the rake and the eye off the centre line where they are", () => {
    const stage = { opening: { width: 12, height: 8 }, depth: 10, rake: 1 / 20 };
    expect(calls(plainStage({ stage }), "K.centre.foot")).toContain("rake by depth");
    const viewer = { distance: 10, eyeHeight: 5, offset: 1 };
    expect(calls(plainStage({ viewer }), "K.centre.foot")).toContain("off-centre-eye by across");
  });

  it("counts a wall on a platform for platforms, every mark of a whole set, and a mark on the plan for reading back and as a place", () => {
    const raised = plainStage({
      plan: { corners: { A: [-4, 4], B: [4, 4] }, walls: [{ id: "W1", from: "A", to: "B", height: 3, base: 0.4 }] },
    });
    expect(calls(raised, "A.foot")).toContain("platform by place");
    expect(calls(plainStage({ unit: "sets" }), "A.foot")).toEqual(["true-size by place", "whole-set by place"]);
    const reading = plainStage({}, { kind: "picture-to-plan", marks: ["B.foot"] });
    expect(calls(reading, "B.foot", ["A.foot"])).toEqual(["reading-back by place", ...floor]);
    expect(calls(reading, "chest.1.top")).toEqual(["reading-back by place", ...floor, "furniture by place"]);
  });
});

describe("skillsCalledOn, of an exercise that lists skills", () => {
  it("counts the listed ones only, and a teacher's own by place", () => {
    const listing = plainStage({ skills: ["ray-to-cvp", "height", "spike-marks"] });
    expect(calls(listing, "B.foot")).toEqual(["ray-to-cvp by across", "spike-marks by place"]);
    expect(calls(listing, "B.top")).toEqual(["height by height", "spike-marks by place"]);
  });
});

describe("nearOnRakingWall", () => {
  it("carries along the raking sides of furniture, and not along the others", () => {
    const chest = { id: "chest", kind: "chest", at: [-2, 6], width: 1, depth: 0.5, height: 0.6 };
    const near = (turn: number) => {
      const exercise = plainStage({ plan: { corners: {}, furniture: [{ ...chest, turn }] } }, { marks: [] });
      const points = exercisePoints(exercise);
      const placed = new Set(["chest.1.foot", "chest.3.foot", "chest.2.foot", "chest.1.top"]);
      const from = (name: string) =>
        nearOnRakingWall(exercise, points, points.get(name) as ProjectedPoint, placed)?.name ?? null;
      return [from("chest.4.foot"), from("chest.1.foot"), from("chest.4.top")];
    };
    expect(near(30)).toEqual(["chest.3.foot", "chest.2.foot", "chest.1.top"]);
    expect(near(0)).toEqual([null, null, null]);
    expect(near(90)).toEqual([null, null, null]);
  });

  it("takes the end placed last, and none of a wall square or parallel to the plaster line", () => {
    const exercise = plainStage({
      plan: {
        corners: { A: [-4, 1], B: [-2, 5], C: [0, 2], D: [0, 7] },
        walls: [
          { id: "W1", from: "A", to: "B", height: 4 },
          { id: "W2", from: "B", to: "C", height: 4 },
          { id: "W3", from: "C", to: "D", height: 4 },
        ],
      },
    });
    const points = exercisePoints(exercise);
    const near = (name: string, placed: readonly string[]) =>
      nearOnRakingWall(exercise, points, points.get(name) as ProjectedPoint, new Set(placed))?.name ?? null;
    expect(near("B.foot", ["A.foot", "C.foot"])).toBe("C.foot");
    expect(near("B.foot", ["C.foot", "A.foot"])).toBe("A.foot");
    expect(near("D.foot", ["C.foot"])).toBeNull();
    expect(near("B.foot", ["D.foot"])).toBeNull();
  });
});
