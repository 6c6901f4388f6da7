import { describe, expect, it } from "vitest";
import type { Mark } from "@/lib/exercise/marks";
import { gradeMarks } from "@/lib/grading/grade-marks";
import { readTideOffice } from "../fixtures/tide-office";
import { D, FOOT_M, H, mark, markFeet, set, TRUE_FEET } from "./mark-tide-office";

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
