import { describe, expect, it } from "vitest";
import { gradeMarks } from "@/lib/grading/grade-marks";
import { HABITS } from "@/lib/habits/all-habits";
import type { PlanPoint } from "@/lib/stage/frame";
import { askedFor, type HouseChange, habitOf, house } from "./house";

function reading({ task, ...rest }: HouseChange) {
  return house({ ...rest, task: { ...task, kind: "picture-to-plan" } });
}

/** Where a student who holds the habit reads a point back on to the plan, by variant. */
function readPlaces(id: string, change: HouseChange, point: string, amount = 1): Readonly<Record<string, PlanPoint>> {
  const habit = habitOf(id);
  const asked = askedFor(reading(change), point);
  const read = "amounts" in habit ? habit.predictPlanWith(asked, amount) : (habit.predictPlan?.(asked) ?? []);
  return Object.fromEntries(read.map(({ variant, at }) => [variant, at]));
}

const floor = { plan: { corners: { Q: [1, 2] } }, task: { marks: ["Q.foot"] } } satisfies HouseChange;
const raked = { ...floor, stage: { rake: "1:20" } } satisfies HouseChange;

describe("the habits in reverse, of (1, 2) drawn at (0.8, 0.4)", () => {
  it.each<[id: string, change: HouseChange, amount: number, expected: Readonly<Record<string, PlanPoint>>]>([
    // Z_b is 1: depth in the picture's proportion, 8 x 0.4/1
    ["plan-depth", floor, 1, { "": [1, 3.2] }],
    ["too-shallow", floor, 0.5, { "": [1, 1] }],
    ["too-deep", floor, 2, { "": [1, 4] }],
    ["from-back-wall", floor, 1, { "": [1, 6] }],
    // the drawn offset taken for the true one
    ["full-width", floor, 1, { "": [0.8, 2] }],
    ["wrong-side", floor, 1, { "": [-1, 2] }],
    ["from-the-jamb", floor, 1, { "": [3, 2] }],
    ["half-scale", floor, 1, { offset: [0.5, 2], both: [0.5, 1] }],
    ["double-scale", floor, 1, { offset: [2, 2], both: [2, 4] }],
    // on the rake it is drawn at (0.8, 0.48); on a level floor y = 8 x 0.48/(2 - 0.48) and x = 0.8 (8 + y)/8
    ["flat-floor", raked, 1, { "": [0.8 * (1 + 0.48 / 1.52), (8 * 0.48) / 1.52] }],
    // and there Z_b is 1.2: 8 x 0.48/1.2
    ["plan-depth", raked, 1, { "": [1, 3.2] }],
  ])("%s", (id, change, amount, expected) => {
    const found = readPlaces(id, change, "Q.foot", amount);
    expect(Object.keys(found).sort()).toEqual(Object.keys(expected).sort());
    for (const [variant, [x, y]] of Object.entries(expected)) {
      expect(found[variant]?.[0]).toBeCloseTo(x, 12);
      expect(found[variant]?.[1]).toBeCloseTo(y, 12);
    }
  });

  it("have none where the idea is about drawing", () => {
    const without = HABITS.filter((habit) => !("amounts" in habit) && !habit.predictPlan).map(({ id }) => id);
    expect([...without].sort()).toEqual(
      [
        "borrowed-vanishing-point",
        "even-split",
        "even-steps",
        "full-height",
        "level-top",
        "parallel-top",
        "plan-angle",
        "square-wall",
        "top-to-centre",
      ].sort(),
    );
  });
});

describe("grading what was read back", () => {
  const corners = { Q: [1, 2], R: [-2, 4], S: [3, 5], T: [-1, 6] } as const;
  const exercise = reading({ plan: { corners }, task: { marks: Object.keys(corners).map((name) => `${name}.foot`) } });
  const read = (place: (at: PlanPoint) => PlanPoint) =>
    gradeMarks(exercise, {
      format: "plasterline.marks/1",
      exercise: "house",
      marks: Object.entries(corners).map(([name, at]) => ({ point: `${name}.foot`, at: place(at) })),
    });

  it.each<[id: string, place: (at: PlanPoint) => PlanPoint]>([
    // Z = 2 y/(8 + y), and Z_b = 1
    ["plan-depth", ([x, y]) => [x, (8 * 2 * y) / (8 + y)]],
    ["wrong-side", ([x, y]) => [-x, y]],
    ["full-width", ([x, y]) => [(x * 8) / (8 + y), y]],
    ["from-back-wall", ([x, y]) => [x, 8 - y]],
    ["half-scale", ([x, y]) => [x / 2, y / 2]],
  ])("names %s", (id, place) => {
    const { habits, marks } = read(place);
    expect(habits.map((habit) => habit.id)).toEqual([id]);
    expect(marks.some(({ habit }) => habit === id)).toBe(true);
  });

  it("names none where all was read truly", () => {
    expect(read((at) => at).habits).toEqual([]);
  });
});
