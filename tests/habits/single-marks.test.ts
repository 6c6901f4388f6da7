import { describe, expect, it } from "vitest";
import type { Exercise } from "@/lib/exercise/exercise";
import type { PicturePoint } from "@/lib/stage/frame";
import { gradeWith, towards } from "./graded-house";
import { house, seenPoint } from "./house";

const corners = { P: [1, 2], Q: [-2, 3], R: [3, 4], S: [-1, 5], T: [2.5, 6], U: [-3, 1.5] } as const;
const names = Object.keys(corners) as readonly (keyof typeof corners)[];
const feet = house({ plan: { corners }, task: { marks: names.map((name) => `${name}.foot`) } });

/** A foot on the wrong side of the centre line. */
function mirrored(exercise: Exercise, name: string): PicturePoint {
  const [X, Z] = seenPoint(exercise, name).picture;
  return [-X, Z];
}

describe("one slip", () => {
  it("is no habit, and is put as a question", () => {
    const grade = gradeWith(feet, { "R.foot": mirrored(feet, "R.foot") });
    expect(grade.habits).toEqual([]);
    const marks = grade.marks.map(({ point, habit }) => [point, habit]);
    expect(marks.filter(([, habit]) => habit !== null)).toEqual([["R.foot", "wrong-side"]]);
    expect(grade.marks.find(({ point }) => point === "R.foot")?.feedback).toContain("Could it be this? You put it");
  });

  it("that no idea explains is not even a question", () => {
    const [X, Z] = seenPoint(feet, "R.foot").picture;
    const grade = gradeWith(feet, { "R.foot": [X + 0.2, Z + 2.6] });
    expect(grade.habits).toEqual([]);
    expect(grade.marks.every(({ habit }) => habit === null)).toBe(true);
    expect(grade.marks.some(({ feedback }) => feedback.includes("Could it be"))).toBe(false);
  });

  it("does not hide a habit that the other marks show", () => {
    const { habits } = gradeWith(feet, {
      ...Object.fromEntries(names.map((name) => [`${name}.foot`, mirrored(feet, `${name}.foot`)] as const)),
      "S.foot": [-3.5, 3.5],
    });
    expect(habits.map(({ id }) => id)).toEqual(["wrong-side"]);
    expect(habits[0]?.marks).not.toContain("S.foot");
  });
});

describe("a mark within tolerance", () => {
  /** How far a foot may lie, metres on the picture plane; the house is drawn at 1:20. */
  const allowed = new Map(gradeWith(feet).marks.map(({ point, toleranceMm }) => [point, (toleranceMm * 20) / 1000]));

  /** A foot moved straight up the page by a share of its tolerance. */
  const raised = (name: string, share: number): PicturePoint => {
    const [X, Z] = seenPoint(feet, name).picture;
    return [X, Z + share * (allowed.get(name) ?? Number.NaN)];
  };

  it("claims nothing by itself, and asks nothing", () => {
    for (const name of feet.task.marks) {
      const grade = gradeWith(feet, { [name]: raised(name, 0.99) });
      expect(grade.score).toBe(100);
      expect(grade.habits).toEqual([]);
      expect(grade.marks.every(({ habit }) => habit === null)).toBe(true);
    }
  });

  it("counts in the set: a steady small bias is a habit too", () => {
    // nine feet at (x, 1.07 y): every one from half to nine tenths of its tolerance too far up its ray
    const many = {
      A: [-3, 1.5],
      B: [3, 1.5],
      C: [-2, 3],
      D: [2, 3],
      E: [-1, 5],
      F: [1, 5],
      G: [0, 4],
      H: [-3, 3],
      I: [3, 3],
    };
    const exercise = house({
      plan: { corners: many },
      task: { marks: Object.keys(many).map((name) => `${name}.foot`) },
    });
    const deep = Object.entries(many).map(([name, [x = 0, y = 0]]): [string, PicturePoint] => {
      const s = 8 / (8 + 1.07 * y);
      return [`${name}.foot`, [x * s, 2 - 2 * s]];
    });
    const grade = gradeWith(exercise, Object.fromEntries(deep));
    expect(grade.score).toBe(100);
    expect(grade.habits.map(({ id }) => id)).toEqual(["too-deep"]);
    expect(grade.habits[0]?.amount).toBeGreaterThan(1.04);
  });

  it("does not where the small errors go all ways", () => {
    const grade = gradeWith(
      feet,
      Object.fromEntries(feet.task.marks.map((name, i) => [name, raised(name, i % 2 === 0 ? 0.9 : -0.9)] as const)),
    );
    expect(grade.score).toBe(100);
    expect(grade.habits).toEqual([]);
  });
});

describe("an idea that an exercise asks for only once", () => {
  // One raking wall only: its far foot at (3, 2) is drawn at (2.4, 0.4), and on the line to the CVP at (1.6, 0.4).
  const exercise = house({
    plan: {
      corners: { A: [2, 0], B: [3, 2], P: [-1, 3], Q: [-2, 5] },
      walls: [{ id: "W1", from: "A", to: "B", height: 3 }],
    },
    task: { given: ["A.foot"], marks: ["B.foot", "P.foot", "Q.foot"] },
  });

  it("is put as a question, not claimed", () => {
    const grade = gradeWith(exercise, { "B.foot": [1.6, 0.4] });
    expect(grade.habits).toEqual([]);
    expect(grade.marks[0]).toMatchObject({
      habit: "square-wall",
      habitPlace: [expect.closeTo(1.6), expect.closeTo(0.4)],
    });
    expect(grade.marks[0]?.feedback).toContain("Could it be this? You ran W1 to the CVP");
  });

  it("is a question as well where it is the only mark made", () => {
    const single = house({
      plan: { corners: { Q: [3, 4] } },
      task: { marks: ["Q.foot"] },
    });
    const grade = gradeWith(single, { "Q.foot": mirrored(single, "Q.foot") });
    expect(grade.habits).toEqual([]);
    expect(grade.marks[0]?.habit).toBe("wrong-side");
  });

  it("is not a question half way between the nearest idea's place and the true one", () => {
    // the plan's angle, copied, comes to (2.2, 0.4)
    const grade = gradeWith(exercise, { "B.foot": towards([2.4, 0.4], [2.2, 0.4], 0.5) });
    expect(grade.marks[0]?.habit).toBeNull();
  });
});
