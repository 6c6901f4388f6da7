import { describe, expect, it } from "vitest";
import { gradeMarks } from "@/lib/grading/grade-marks";
import { ODDS_AGAINST_NEXT, ODDS_AGAINST_NONE, ODDS_CAP } from "@/lib/habits/classify";
import { SAYS_NOTHING } from "@/lib/habits/hypothesis";
import { SLIP_SHARE } from "@/lib/habits/likelihood";
import { QUESTION_ODDS } from "@/lib/habits/question";
import { HAND_SHARE } from "@/lib/habits/reveal";
import type { PicturePoint, PlanPoint } from "@/lib/stage/frame";
import { readTideOffice } from "../fixtures/tide-office";
import { gradeWith, idsOf, towards } from "./graded-house";
import { house, seenPoint } from "./house";

/** Picture of a place of the house's level floor. */
function drawn([x, y]: PlanPoint): PicturePoint {
  return [(x * 8) / (8 + y), (2 * y) / (8 + y)];
}

/** Depth in the plan's proportion: Z = y/8, X on the ray. */
function inPlanProportion([x, y]: PlanPoint): PicturePoint {
  return [x * (1 - y / 16), y / 8];
}

const places: Readonly<Record<string, PlanPoint>> = {
  P: [1, 2],
  Q: [-2, 3],
  R: [3, 4],
  S: [-1, 5],
  T: [2.5, 6],
  U: [-3, 1.5],
};
const feet = house({ plan: { corners: places }, task: { marks: Object.keys(places).map((name) => `${name}.foot`) } });

/** The six feet, those named drawn where `idea` puts them. */
function drawFeet(idea: (at: PlanPoint) => PicturePoint, names: readonly string[] = Object.keys(places)) {
  return gradeWith(
    feet,
    Object.fromEntries(names.map((name) => [`${name}.foot`, idea(places[name] as PlanPoint)] as const)),
  );
}

describe("odds against there being no habit", () => {
  it("are none for true marks", () => {
    expect(drawFeet(drawn).habits).toEqual([]);
  });

  it("are 20 or more wherever a habit is claimed, as marks go over from true to the habit's", () => {
    const claims = Array.from({ length: 41 }, (_, i) =>
      drawFeet((at) => towards(drawn(at), inPlanProportion(at), i / 40)),
    ).map(({ habits }) => habits);
    expect(claims[0]).toEqual([]);
    expect(claims.at(-1)?.map(({ id }) => id)).toEqual(["plan-depth"]);
    for (const { odds } of claims.flat()) {
      expect(odds).toBeGreaterThanOrEqual(ODDS_AGAINST_NONE);
      expect(odds).toBeLessThanOrEqual(ODDS_CAP);
    }
  });

  it("are capped at a million", () => {
    expect(drawFeet(([x, y]) => drawn([-x, y])).habits).toMatchObject([{ id: "wrong-side", odds: 1e6 }]);
  });

  it("are those the contract states, as are the rest of its figures", () => {
    expect([ODDS_AGAINST_NONE, ODDS_AGAINST_NEXT, QUESTION_ODDS, ODDS_CAP]).toEqual([20, 3, 10, 1e6]);
    expect([SLIP_SHARE, SAYS_NOTHING, HAND_SHARE]).toEqual([0.05, 0.5, 0.006]);
  });
});

describe("odds against the next habit", () => {
  // Two walls from the plaster line whose plan's angle, copied, nearly points at the CVP: from (2, 0) in the direction
  // (-1.8, 2), up to Z = 0.4, comes to 2 - 0.36 = 1.64, and toward the CVP (0, 2) to 1.6: 2 mm of paper apart.
  const exercise = house({
    plan: {
      corners: { A: [2, 0], B: [0.2, 2], C: [-2, 0], D: [-0.2, 2] },
      walls: [
        { id: "W1", from: "A", to: "B", height: 3 },
        { id: "W2", from: "C", to: "D", height: 3 },
      ],
    },
    task: { given: ["A.foot", "C.foot"], marks: ["B.foot", "D.foot"] },
  });
  const at = (X: number) => gradeWith(exercise, { "B.foot": [X, 0.4], "D.foot": [-X, 0.4] });

  it("are wanting half way between the two, so that neither is claimed", () => {
    const grade = at(1.62);
    expect(grade.habits).toEqual([]);
    expect(grade.marks.map(({ habit }) => habit)).toEqual([null, null]);
  });

  it.each([
    ["square-wall", 1.55],
    ["plan-angle", 1.69],
  ])("are enough on the far side of %s", (id, X) => {
    expect(idsOf(at(X))).toEqual([id]);
  });
});

describe("habits that come to the same places", () => {
  const wallsFrom = (y: number) =>
    house({
      plan: {
        corners: { A: [2, y], B: [3, y + 3], C: [-2, y], D: [-3.2, y + 4] },
        walls: [
          { id: "W1", from: "A", to: "B", height: 3 },
          { id: "W2", from: "C", to: "D", height: 3 },
        ],
      },
      task: { given: ["A.foot", "A.top", "C.foot", "C.top"], marks: ["B.foot", "D.foot", "B.top", "D.top"] },
    });

  it("are both said where the near ends stand on the plaster line: parallel-top and full-height", () => {
    const exercise = wallsFrom(0);
    const over = (name: string): PicturePoint => {
      const [X, Z] = seenPoint(exercise, `${name}.foot`).picture;
      return [X, Z + 3];
    };
    const grade = gradeWith(exercise, { "B.top": over("B"), "D.top": over("D") });
    expect([...idsOf(grade)].sort()).toEqual(["full-height", "parallel-top"]);
    const [one, other] = grade.habits;
    expect(one?.odds).toBe(other?.odds);
    expect(one?.marks).toEqual(["B.top", "D.top"]);
    expect(other?.marks).toEqual(one?.marks);
    const words = grade.marks.find(({ point }) => point === "B.top")?.feedback;
    expect(words).toContain("parallel to its foot");
    expect(words).toContain("Or, which comes to the same place here: you kept the true height");
  });

  it("are told apart where they do not: near ends 2 m upstage, drawn at 0.8 of their height", () => {
    const exercise = wallsFrom(2);
    const over = (name: string, up: number): PicturePoint => {
      const [X, Z] = seenPoint(exercise, `${name}.foot`).picture;
      return [X, Z + up];
    };
    expect(idsOf(gradeWith(exercise, { "B.top": over("B", 3), "D.top": over("D", 3) }))).toEqual(["full-height"]);
    expect(idsOf(gradeWith(exercise, { "B.top": over("B", 2.4), "D.top": over("D", 2.4) }))).toEqual(["parallel-top"]);
  });
});

describe("a fitted amount pays for its freedom", () => {
  it("on two marks of one depth, which it could always fit: plan-depth, with no amount", () => {
    // The tide office's B and C both stand 14 ft upstage of 26; D = 36, h = 8. Z_b = 8 - 8 x 36/62, of which 14/26.
    const Z = ((8 * 26) / 62) * (14 / 26);
    const feetOf = (x: number): PicturePoint => [x * (1 - Z / 8) * 0.3048, Z * 0.3048];
    const exercise = readTideOffice(["/task/given", ["A.foot"]], ["/task/marks", ["B.foot", "C.foot"]]);
    const { habits } = gradeMarks(exercise, {
      format: "plasterline.marks/1",
      exercise: "tide-office",
      marks: [
        { point: "B.foot", at: feetOf(-7) },
        { point: "C.foot", at: feetOf(9) },
      ],
    });
    expect(habits).toMatchObject([{ id: "plan-depth", marks: ["B.foot", "C.foot"], amount: null }]);
  });

  it.each([
    ["too-shallow", 0.5],
    ["too-shallow", 0.7],
    ["too-shallow", 0.85],
    ["too-deep", 1.2],
    ["too-deep", 1.5],
    ["too-deep", 2.2],
  ])("and is claimed where nothing fixed explains the marks: %s by %f", (id, r) => {
    const { habits } = drawFeet(([x, y]) => drawn([x, r * y]));
    expect(habits.map((habit) => habit.id)).toEqual([id]);
    expect(Math.abs((habits[0]?.amount ?? 0) / r - 1)).toBeLessThan(0.02);
  });
});

describe("two habits at once", () => {
  const exercise = house({
    plan: {
      corners: { A: [3, 1], B: [2, 5], C: [-2.5, 4], D: [-3.5, 1] },
      walls: [
        { id: "W1", from: "A", to: "B", height: 3 },
        { id: "W2", from: "B", to: "C", height: 3 },
        { id: "W3", from: "C", to: "D", height: 3 },
      ],
    },
    task: { marks: ["A.foot", "B.foot", "C.foot", "D.foot", "A.top", "B.top", "C.top", "D.top"] },
  });

  it("are both named, each with its own marks, the stronger first", () => {
    const drawnMarks = Object.fromEntries(
      ["A", "B", "C", "D"].flatMap((name) => {
        const [X, Z] = seenPoint(exercise, `${name}.foot`).picture;
        return [
          [`${name}.foot`, [-X, Z]],
          [`${name}.top`, [X, Z + 3]],
        ] as const;
      }),
    );
    const { habits } = gradeWith(exercise, drawnMarks);
    expect(habits.map(({ id }) => id).sort()).toEqual(["full-height", "wrong-side"]);
    expect(habits.find(({ id }) => id === "wrong-side")?.marks).toEqual(["A.foot", "B.foot", "C.foot", "D.foot"]);
    expect(habits.find(({ id }) => id === "full-height")?.marks).toEqual(["A.top", "B.top", "C.top", "D.top"]);
    const odds = habits.map((habit) => habit.odds);
    expect(odds).toEqual([...odds].sort((a, b) => b - a));
  });
});
