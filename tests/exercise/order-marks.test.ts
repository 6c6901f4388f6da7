import { describe, expect, it } from "vitest";
import { type Change, readTideOffice } from "../fixtures/tide-office";

/** The marks worked out for the tide office, none of them listed. */
function ordered(...changes: readonly Change[]): readonly string[] {
  return readTideOffice(["/task/marks", undefined], ...changes).task.marks;
}

describe("the order of marks worked out", () => {
  it("asks feet before tops and near before far, in a plan of walls alone", () => {
    const plan = {
      corners: { A: [-10, 3], B: [-6, 12], C: [6, 13], D: [10, 4] },
      walls: [
        { id: "W1", from: "A", to: "B", height: 10 },
        { id: "W2", from: "B", to: "C", height: 10 },
        { id: "W3", from: "C", to: "D", height: 10 },
      ],
    };
    expect(ordered(["/plan", plan])).toEqual([
      ...["A.foot", "D.foot", "B.foot", "C.foot"],
      ...["A.top", "D.top", "B.top", "C.top"],
    ]);
  });

  it("asks walls before openings before furniture", () => {
    const groups = ordered().map((name) =>
      /^[RABCE]\./.test(name) ? "wall" : /^W/.test(name) ? "opening" : /^desk/.test(name) ? "furniture" : "stage",
    );
    expect(groups.lastIndexOf("wall")).toBeLessThan(groups.indexOf("opening"));
    expect(groups.lastIndexOf("opening")).toBeLessThan(groups.indexOf("furniture"));
    expect(groups.lastIndexOf("opening")).toBeLessThan(groups.indexOf("stage"));
    expect(groups.lastIndexOf("stage")).toBeLessThan(groups.indexOf("furniture"));
  });

  it("asks every point once that lies in the frame", () => {
    const marks = ordered();
    // R stands at the very edge, inside; everything of the example is in the frame
    expect(new Set(marks).size).toBe(marks.length);
    expect(marks).toHaveLength(38);
  });

  it("asks neither what is given nor what falls outside the frame", () => {
    const marks = ordered(["/task/given", ["A.foot", "A.top"]], ["/plan/corners/R", [-20, 3]]);
    for (const name of ["A.foot", "A.top", "R.foot", "R.top"]) expect(marks).not.toContain(name);
    expect(marks).toContain("B.foot");
  });

  it("asks only places on the floor, when the plan is read back out of the picture", () => {
    const marks = ordered(["/task/kind", "picture-to-plan"]);
    expect(marks).toContain("B.foot");
    expect(marks).toContain("W4.door.start.sill");
    expect(marks.filter((name) => /top$|head$|lookout|^S1/.test(name))).toEqual([]);
  });

  it("keeps the order that is written", () => {
    expect(readTideOffice(["/task/marks", ["B.top", "A.foot"]]).task.marks).toEqual(["B.top", "A.foot"]);
  });
});
