import { describe, expect, it } from "vitest";
import type { Exercise } from "@/lib/exercise/exercise";
import { readTideOffice } from "../fixtures/tide-office";
import { D, FOOT_M, graded, H, mark, markFeet, TRUE_FEET } from "./mark-tide-office";

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
