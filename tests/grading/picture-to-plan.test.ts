import { describe, expect, it } from "vitest";
import { gradeMarks } from "@/lib/grading/grade-marks";
import { readTideOffice } from "../fixtures/tide-office";
import { D, FOOT_M, graded, H, mark, set } from "./mark-tide-office";

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
