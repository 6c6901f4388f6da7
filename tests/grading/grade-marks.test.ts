import { describe, expect, it } from "vitest";
import type { Mark } from "@/lib/exercise/marks";
import { gradeMarks, unaskedMark } from "@/lib/grading/grade-marks";
import { type Change, readTideOffice } from "../fixtures/tide-office";
import { ALL_TRUE, D, FOOT_M, graded, H, mark, markFeet, set, TRUE_FEET } from "./mark-tide-office";

describe("the format's own example", () => {
  const { marks } = gradeMarks(readTideOffice(), set([mark("B.foot", [-1.652, 0.551])]));
  const [foot] = marks;

  it("is 3.654 mm off, allowed 1.978 mm, scored 78.8", () => {
    expect(foot?.offMm).toBeCloseTo(3.6545, 3);
    expect(foot?.toleranceMm).toBeCloseTo(1.978, 3);
    expect(foot?.score).toBeCloseTo(78.8, 1);
    expect(foot?.at).toEqual([-1.652, 0.551]);
    expect(foot?.true[0]).toBeCloseTo(-1.536, 3);
    expect(foot?.true[1]).toBeCloseTo(0.683, 3);
  });

  it("means a place straight downstage of the true one", () => {
    // y = D Z / (h - Z), x = X (D + y) / D
    const y = (D * 0.551) / (H - 0.551);
    expect(foot?.plan).toEqual({ across: expect.closeTo(0, 2), upstage: expect.closeTo(y - 14 * FOOT_M, 9) });
    expect(y - 14 * FOOT_M).toBeCloseTo(-1.064, 3);
  });

  it("says so in words", () => {
    expect(foot?.feedback).toContain("mm low");
    expect(foot?.feedback).toContain("instead of 14'-0\"");
    expect(foot?.feedback).not.toMatch(/NaN|undefined|Infinity/);
  });
});

describe("a set of marks", () => {
  it("all true, is exactly 100", () => {
    const grade = gradeMarks(readTideOffice(), set(ALL_TRUE));
    expect(grade).toMatchObject({ exercise: "tide-office", outcome: "scored", score: 100, missing: [] });
    expect(grade.marks.map(({ score }) => score)).toEqual([100, 100, 100, 100]);
  });

  it("comes in the task's order, whatever its own, and names what is missing in that order", () => {
    const [aFoot, , , bTop] = ALL_TRUE as [Mark, Mark, Mark, Mark];
    const grade = gradeMarks(readTideOffice(), set([bTop, aFoot]));
    expect(grade.marks.map(({ point }) => point)).toEqual(["A.foot", "B.top"]);
    expect(grade.missing).toEqual(["A.top", "B.foot"]);
    expect(grade.score).toBe(50);
  });

  it("empty, is unready", () => {
    expect(gradeMarks(readTideOffice(), set([]))).toEqual({
      exercise: "tide-office",
      outcome: "unready",
      score: null,
      marks: [],
      missing: ["A.foot", "A.top", "B.foot", "B.top"],
      habits: [],
      impliedViewer: null,
    });
  });

  it("counts the later of two marks for one point", () => {
    const foot = graded(readTideOffice(), "B.foot", mark("B.foot", [0, 0]), markFeet("B.foot", TRUE_FEET["B.foot"]));
    expect(foot.score).toBe(100);
    const worse = graded(readTideOffice(), "B.foot", markFeet("B.foot", TRUE_FEET["B.foot"]), mark("B.foot", [0, 0]));
    expect(worse.score).toBe(0);
  });

  it("tells a mark for a point that is not asked", () => {
    const exercise = readTideOffice();
    expect(unaskedMark(exercise, set(ALL_TRUE))).toBeNull();
    expect(unaskedMark(exercise, set([...ALL_TRUE, mark("C.foot", [0, 0])]))).toBe(4);
  });

  it.each(["mouse", "touch", "pen", "keys", "paper"] as const)("made with %s is allowed as much as any", (device) => {
    const bare = graded(readTideOffice(), "B.foot", mark("B.foot", [-1.652, 0.551]));
    const made = graded(readTideOffice(), "B.foot", { ...mark("B.foot", [-1.652, 0.551]), with: device });
    expect(made).toEqual(bare);
  });
});

describe("marks at another scale", () => {
  it("are measured and allowed on the paper they were drawn on", () => {
    const at = mark("B.foot", [-1.652, 0.551]);
    const small = gradeMarks(readTideOffice(), set([at], { scale: "1/8in=1ft" })).marks[0];
    // half the size: half the error; judged over 7.113 mm, so 2 sqrt(0.25 + (0.06 x 7.113)^2) = 1.315
    expect(small?.offMm).toBeCloseTo(3.6545 / 2, 3);
    expect(small?.toleranceMm).toBeCloseTo(1.315, 3);
    const same = gradeMarks(readTideOffice(), set([at], { scale: "1:48" })).marks[0];
    expect(same?.offMm).toBeCloseTo(3.6545, 3);
  });
});

describe("what a mark means on the stage", () => {
  it.each([
    // a height: z = h + (Z - h) / s, so 0.3 ft low at s = 0.72 is 5 in short
    ["B.top", [-5.04, 12.02], { height: (-0.3 / 0.72) * FOOT_M }],
    ["B.top", [-4.5, 12.32], { height: 0 }],
    // on the plaster line's own height: Z = 0 means y = 0
    ["B.foot", [-5.04, 0], { across: (-5.04 + 7) * FOOT_M, upstage: -14 * FOOT_M }],
    // half way to the horizon: y = D
    ["B.foot", [-3.5, 4], { across: 0, upstage: 22 * FOOT_M }],
    // below the plaster line: on the apron, y = 36 Z / (8 - Z) = -3
    ["B.foot", [0, (-8 * 3) / 33], { across: 7 * FOOT_M, upstage: -17 * FOOT_M }],
  ] as const)("%s drawn at %o ft", (point, at, expected) => {
    const { plan } = graded(readTideOffice(), point, markFeet(point, at));
    expect(Object.keys(plan ?? {})).toEqual(Object.keys(expected));
    for (const [key, value] of Object.entries(expected))
      expect((plan as Record<string, number> | null)?.[key]).toBeCloseTo(value, 9);
  });

  it.each([
    ["on the horizon", 8],
    ["above it", 9],
  ])("a foot %s means no place on the floor", (_, Z) => {
    const foot = graded(readTideOffice(), "B.foot", markFeet("B.foot", [-5, Z]));
    expect(foot.plan).toBeNull();
    expect(foot.score).toBe(0);
    expect(foot.offMm).toBeGreaterThan(0);
  });

  it.each([
    // a sill off the floor means a height, a door's on the floor a place, a nosing a place on its own level
    ["W3.lookout.start.sill", ["height"]],
    ["W3.lookout.start.head", ["height"]],
    ["W4.door.start.sill", ["across", "upstage"]],
    ["P1.2.foot", ["across", "upstage"]],
    ["P1.2.top", ["height"]],
    ["S1.1.start", ["across", "upstage"]],
    ["desk.3.foot", ["across", "upstage"]],
    ["K1.centre.top", ["height"]],
  ])("%s is told by %o", (point, keys) => {
    const exercise = readTideOffice(["/task/marks", [point]]);
    expect(Object.keys(graded(exercise, point, mark(point, [0.1, 0.2])).plan ?? {})).toEqual(keys);
  });

  it("reads a place back from the level the thing stands on", () => {
    const base: readonly Change[] = [
      ["/plan/furniture/0/base", '8"'],
      ["/task/marks", ["desk.1.foot"]],
    ];
    // Z - b = (h - b) y / (D + y) at y = 9 ft: on the floor it would mean another depth
    const Z = 8 / 12 + ((8 - 8 / 12) * 9) / 45;
    const { plan } = graded(readTideOffice(...base), "desk.1.foot", markFeet("desk.1.foot", [0, Z]));
    const trueDepth = readTideOffice(...base).plan.furniture[0]?.at[1] ?? Number.NaN;
    const turn = Math.PI / 9;
    const near = trueDepth - (2.5 * Math.sin(turn) + 1.25 * Math.cos(turn)) * FOOT_M;
    expect(plan).toMatchObject({ upstage: expect.closeTo(9 * FOOT_M - near, 9) });
  });
});
