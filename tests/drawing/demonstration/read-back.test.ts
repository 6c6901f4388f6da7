import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readBack } from "@/lib/drawing/demonstration/read-back";
import { exercisePoints } from "@/lib/exercise/exercise-points";
import { readTideOffice } from "../../fixtures/tide-office";
import { seeded } from "../../seeded";

const READ = { kind: "picture-to-plan", marks: ["Q.foot"] };

/** The format's example with one loose point, read back. */
function placed(at: readonly [number, number], viewer: object, rake: number | string = 0) {
  const exercise = readTideOffice(
    ["/units", "m"],
    ["/scale", "1:50"],
    ["/stage", { opening: { width: 12, height: 6 }, depth: 9, apron: 2, rake }],
    ["/viewer", viewer],
    ["/plan", { corners: { Q: at } }],
    ["/task", READ],
  );
  const point = exercisePoints(exercise).get("Q.foot");
  if (!point) throw new Error("Q.foot is a point of the plan");
  return { exercise, point };
}

describe("reading a point back on to the plan", () => {
  it("finds the offset on the plaster line and the depth beside it, by figures worked by hand", () => {
    // Similar triangles: of an eye 10 m off and 2 m high, (2, 5) is seen at s = 10/15: X = 2 s, Z = 2 - 2 s.
    const { exercise, point } = placed([2, 5], { distance: 10, eyeHeight: 2 });
    const result = readBack(exercise, point);
    expect(result?.place[0]).toBeCloseTo(2, 12);
    expect(result?.place[1]).toBeCloseTo(5, 12);
    // The distance point 10 m to the right lies off the paper (6 m of opening and 45 mm at 1:50), its half does not.
    expect(result?.steps.map((step) => (step.do === "line" ? step.toward : step.do))).toEqual([
      "centre vanishing point",
      "mark",
      "half distance point",
      "mark",
    ]);
    expect(result?.steps[1]?.say).toContain("2000 mm stage left of the centre line");
    expect(result?.steps[3]?.say).toBe(
      "It falls 2500 mm beside mark 2. Twice that is the depth: 5000 mm upstage of the plaster line.",
    );
  });

  it("reads a point of the plaster line from its offset alone", () => {
    const { exercise, point } = placed([3, 0], { distance: 10, eyeHeight: 2 });
    const result = readBack(exercise, point);
    expect(result?.steps).toHaveLength(2);
    expect(result?.place).toEqual([3, 0]);
  });

  it("has nothing to read of a point behind the eye", () => {
    const { exercise, point } = placed([1, 1], { distance: 10, eyeHeight: 2 });
    expect(readBack(exercise, { ...point, picture: null })).toBeNull();
  });

  it("comes back to the plan from any place, level or raked, the eye aside or not", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -5, max: 5, noNaN: true }),
        fc.double({ min: 0.05, max: 9, noNaN: true }),
        fc.double({ min: 5, max: 20, noNaN: true }),
        fc.double({ min: 1, max: 4, noNaN: true }),
        fc.double({ min: -4, max: 4, noNaN: true }),
        fc.constantFrom(0, 0.04, 0.0625),
        (x, y, distance, eyeHeight, offset, rake) => {
          const { exercise, point } = placed([x, y], { distance, eyeHeight, offset }, rake);
          const place = readBack(exercise, point)?.place;
          expect(place?.[0]).toBeCloseTo(x, 8);
          expect(place?.[1]).toBeCloseTo(y, 8);
        },
      ),
      seeded,
    );
  });
});
