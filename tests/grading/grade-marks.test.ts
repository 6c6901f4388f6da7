import { describe, expect, it } from "vitest";
import type { Exercise } from "@/lib/exercise/exercise";
import type { Mark, MarkSet } from "@/lib/exercise/marks";
import type { GradedMark } from "@/lib/grading/grade";
import { gradeMarks, unaskedMark } from "@/lib/grading/grade-marks";
import { type Change, readTideOffice } from "../fixtures/tide-office";

const FOOT_M = 0.3048;
/** The tide office's eye: 36 ft before the plaster line, 8 ft high. */
const D = 36 * FOOT_M;
const H = 8 * FOOT_M;

function set(marks: readonly Mark[], more: Partial<MarkSet> = {}): MarkSet {
  return { format: "plasterline.marks/1", exercise: "tide-office", marks, ...more };
}

function mark(point: string, at: readonly [number, number]): Mark {
  return { point, at };
}

/** A mark in the picture's feet. */
function markFeet(point: string, [X, Z]: readonly [number, number]): Mark {
  return mark(point, [X * FOOT_M, Z * FOOT_M]);
}

function graded(exercise: Exercise, point: string, ...marks: readonly Mark[]): GradedMark {
  const found = gradeMarks(exercise, set(marks)).marks.find((one) => one.point === point);
  if (!found) throw new Error(`${point} was not graded.`);
  return found;
}

// Picture feet by hand: s = 36 / (36 + y), X = x s, Z = 8 + (z - 8) s.
const TRUE_FEET = {
  "A.foot": [(-12 * 36) / 39, 8 - (8 * 36) / 39],
  "A.top": [(-12 * 36) / 39, 8 + (6 * 36) / 39],
  "B.foot": [-5.04, 2.24],
  "B.top": [-5.04, 12.32],
} as const;
const ALL_TRUE = Object.entries(TRUE_FEET).map(([point, at]) => markFeet(point, at));

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

describe("a drawing that goes on from the student's own marks", () => {
  const own = readTideOffice(["/task/goOnFrom", "own"]);
  const foot = mark("B.foot", [-1.652, 0.551]);
  // the foot stands at depth y, so its upright is drawn at s = D / (D + y)
  const s = D / (D + (D * 0.551) / (H - 0.551));
  const topOverIt = mark("B.top", [-1.652, H + (14 * FOOT_M - H) * s]);

  it("judges a top over its own foot", () => {
    const top = graded(own, "B.top", foot, topOverIt);
    expect(top.offMm).toBeCloseTo(0, 9);
    expect(top.score).toBe(100);
    expect(top.true[0]).toBeCloseTo(-1.652, 9);
    expect(top.plan).toMatchObject({ height: expect.closeTo(0, 9) });
    // the foot is judged as ever
    expect(graded(own, "B.foot", foot, topOverIt).score).toBeCloseTo(78.8, 1);
  });

  it("punishes the same top where it goes on from the true points", () => {
    expect(graded(readTideOffice(), "B.top", foot, topOverIt).score).toBeLessThan(100);
  });

  it("punishes the true top over a wrong foot", () => {
    expect(graded(own, "B.top", foot, markFeet("B.top", TRUE_FEET["B.top"])).score).toBeLessThan(100);
  });

  it.each([
    ["there is no mark for the foot", []],
    ["the foot is marked above the horizon, so that it stands nowhere", [mark("B.foot", [-1.6, 2.6])]],
  ])("judges a top on the true foot where %s", (_, marks) => {
    const top = graded(own, "B.top", ...marks, markFeet("B.top", TRUE_FEET["B.top"]));
    expect(top.score).toBe(100);
    expect(top.true[0]).toBeCloseTo(-5.04 * FOOT_M, 9);
  });

  it("allows each mark as much as in any other drawing", () => {
    const allowed = (exercise: Exercise) => graded(exercise, "B.top", foot, topOverIt).toleranceMm;
    expect(allowed(own)).toBe(allowed(readTideOffice()));
  });
});

describe("reading the plan back out of the picture", () => {
  const reading = readTideOffice(["/task/kind", "picture-to-plan"], ["/task/marks", ["A.foot", "B.foot"]]);

  it("projects a mark, and measures its error on the picture", () => {
    const foot = graded(reading, "B.foot", mark("B.foot", [-2.1336, 3.2]));
    // true place (-7, 14) ft = (-2.1336, 4.2672) m; picture of the mark: s = D / (D + 3.2)
    const s = D / (D + 3.2);
    const off = Math.hypot(-2.1336 * s + 5.04 * FOOT_M, H * (1 - s) - 2.24 * FOOT_M);
    expect(foot.offMm).toBeCloseTo((off * 1000) / 48, 9);
    expect(foot.true).toEqual([-7 * FOOT_M, 14 * FOOT_M]);
    expect(foot.plan).toEqual({ across: expect.closeTo(0, 9), upstage: expect.closeTo(3.2 - 4.2672, 9) });
    expect(foot.toleranceMm).toBeCloseTo(1.978, 3);
  });

  it("gives true marks exactly 100", () => {
    const marks = [mark("A.foot", [-12 * FOOT_M, 3 * FOOT_M]), mark("B.foot", [-7 * FOOT_M, 14 * FOOT_M])];
    expect(gradeMarks(reading, set(marks)).score).toBe(100);
  });

  it.each([
    ["level with the eye", -D],
    ["behind the eye", -D - 1],
  ])("gives nothing for a place %s, which no picture shows", (_, y) => {
    const foot = graded(reading, "B.foot", mark("B.foot", [0, y]));
    expect(foot).toMatchObject({ offMm: null, score: 0, plan: { upstage: y - 14 * FOOT_M } });
    expect(foot.feedback).not.toMatch(/NaN|undefined|Infinity/);
  });

  it("holds a point that is not on the floor at its own level", () => {
    const tops = readTideOffice(["/task/kind", "picture-to-plan"]);
    const top = graded(tops, "B.top", mark("B.top", [-7 * FOOT_M, 14 * FOOT_M]));
    expect(top).toMatchObject({ offMm: expect.closeTo(0, 9), score: 100 });
  });
});

describe("the eye that a drawing implies", () => {
  it("is the exercise's own, when the marks are true", () => {
    const { impliedViewer } = gradeMarks(readTideOffice(["/viewer/offset", 2]), {
      ...set([]),
      marks: trueMarks(2),
    });
    expect(impliedViewer).toEqual({
      distance: expect.closeTo(D, 6),
      eyeHeight: expect.closeTo(H, 6),
      offset: expect.closeTo(2 * FOOT_M, 6),
      residualMm: expect.closeTo(0, 6),
    });
  });

  it("is nearer when all is drawn as if from nearer by", () => {
    const near = 24;
    const marks = Object.entries({
      "A.foot": [-12, 3, 0],
      "A.top": [-12, 3, 14],
      "B.foot": [-7, 14, 0],
      "B.top": [-7, 14, 14],
    }).map(([point, [x = 0, y = 0, z = 0]]) =>
      markFeet(point, [(x * near) / (near + y), 8 + ((z - 8) * near) / (near + y)]),
    );
    const { impliedViewer } = gradeMarks(readTideOffice(), set(marks));
    expect(impliedViewer?.distance).toBeCloseTo(near * FOOT_M, 6);
    expect(impliedViewer?.residualMm).toBeCloseTo(0, 6);
  });

  it.each([
    ["one mark", [mark("B.foot", [-1.5, 0.7])]],
    ["marks far out of all sense", [mark("A.foot", [1e12, -1e12]), mark("B.top", [-1e12, 1e12])]],
  ])("is not told by %s", (_, marks) => {
    const { impliedViewer, marks: judged } = gradeMarks(readTideOffice(), set(marks));
    expect(impliedViewer).toBeNull();
    for (const { feedback } of judged) expect(feedback).not.toMatch(/NaN|undefined|Infinity/);
  });

  it("is not told by points on the plaster line, where every eye sees the same", () => {
    const exercise = readTideOffice(
      ["/plan/corners/P", [-3, 0]],
      ["/plan/corners/Q", [3, 0]],
      ["/task/marks", ["P.foot", "Q.foot"]],
    );
    expect(
      gradeMarks(exercise, set([markFeet("P.foot", [-3, 0]), markFeet("Q.foot", [3, 0])])).impliedViewer,
    ).toBeNull();
  });
});

/** The tide office's four marks from an eye `offset` feet off the centre line. */
function trueMarks(offset: number): readonly Mark[] {
  return Object.entries(TRUE_FEET).map(([point, [X, Z]]) => {
    const s = point.startsWith("A") ? 36 / 39 : 0.72;
    return markFeet(point, [X + offset * (1 - s), Z]);
  });
}
