import { describe, expect, it } from "vitest";
import { HABITS } from "@/lib/habits/all-habits";
import { askedFor, house, placesOf } from "./house";

describe("the list of habits", () => {
  it("is that of the table", () => {
    expect(HABITS.map(({ id }) => id).sort()).toEqual(
      [
        "behind-instead",
        "borrowed-vanishing-point",
        "double-scale",
        "even-split",
        "even-steps",
        "flat-floor",
        "from-back-wall",
        "from-the-jamb",
        "full-height",
        "full-width",
        "half-scale",
        "level-top",
        "parallel-top",
        "plan-angle",
        "plan-depth",
        "square-wall",
        "too-deep",
        "too-shallow",
        "top-to-centre",
        "wrong-side",
      ].sort(),
    );
  });
});

/** The habits that have something to say of a point, of those that are held in a picture of this kind. */
function speaking(exercise: ReturnType<typeof house>, point: string): readonly string[] {
  const asked = askedFor(exercise, point);
  return HABITS.map(({ id }) => id).filter((id) => Object.keys(placesOf(id, asked, 0.5)).length > 0);
}

const OF_PLACES = ["from-the-jamb", "wrong-side"];
const OF_DEPTHS = ["from-back-wall", "full-width", "plan-depth", "too-deep", "too-shallow"];
const OF_SIZES = ["double-scale", "half-scale"];

function onFloor(x: number, y: number, rake: number | string = 0) {
  return house({ stage: { rake }, plan: { corners: { Q: [x, y] } }, task: { marks: ["Q.foot"] } });
}

describe("what a habit has to say of a place on the floor", () => {
  it.each([
    ["anywhere", onFloor(1, 2), [...OF_PLACES, ...OF_DEPTHS, ...OF_SIZES]],
    ["on the centre line, which has no side", onFloor(0, 2), [...OF_DEPTHS, ...OF_SIZES]],
    ["on the plaster line, which is true size", onFloor(1, 0), [...OF_PLACES, ...OF_SIZES, "from-back-wall"]],
    ["before the plaster line", onFloor(1, -1), [...OF_PLACES, ...OF_DEPTHS, ...OF_SIZES, "behind-instead"]],
    ["before the plaster line on the centre line", onFloor(0, -1), [...OF_DEPTHS, ...OF_SIZES, "behind-instead"]],
    ["on a rake", onFloor(1, 2, 0.05), [...OF_PLACES, ...OF_DEPTHS, ...OF_SIZES, "flat-floor"]],
    ["on a rake at the plaster line", onFloor(1, 0, 0.05), [...OF_PLACES, ...OF_SIZES, "from-back-wall"]],
  ])("%s", (_, exercise, expected) => {
    expect([...speaking(exercise, "Q.foot")].sort()).toEqual([...expected].sort());
  });

  it("is nothing of a foot on a base, whose place is not the floor's", () => {
    const plan = { columns: [{ id: "K1", at: [1, 2], diameter: 0.3, height: 2, base: 0.4 }] };
    expect(speaking(house({ plan, task: { marks: ["K1.centre.foot"] } }), "K1.centre.foot")).toEqual([]);
  });
});

/** Three walls: square to the plaster line, parallel to it, and raking. */
const plan = {
  corners: { A: [-3, 1], B: [-3, 3], C: [1, 3], D: [2, 6] },
  walls: [
    { id: "W1", from: "A", to: "B", height: 3 },
    { id: "W2", from: "B", to: "C", height: 3 },
    { id: "W3", from: "C", to: "D", height: 3 },
  ],
};
const OF_FLOOR = [...OF_PLACES, ...OF_DEPTHS, ...OF_SIZES];

describe("what a habit has to say of a wall", () => {
  it.each<[what: string, given: readonly string[], marks: readonly string[], of: string, expected: readonly string[]]>([
    ["the first foot of all", [], ["C.foot"], "C.foot", OF_FLOOR],
    ["a foot whose other end is to come", [], ["D.foot", "C.foot"], "D.foot", OF_FLOOR],
    ["the far foot of a square wall", [], ["A.foot", "B.foot"], "B.foot", OF_FLOOR],
    ["the far foot of a parallel wall", [], ["B.foot", "C.foot"], "C.foot", OF_FLOOR],
    ["the far foot of a raking wall", [], ["C.foot", "D.foot"], "D.foot", [...OF_FLOOR, "square-wall", "plan-angle"]],
    ["the same with the near end given", ["C.foot"], ["D.foot"], "D.foot", [...OF_FLOOR, "square-wall", "plan-angle"]],
    [
      "its near foot, drawn after its far one",
      [],
      ["D.foot", "C.foot"],
      "C.foot",
      [...OF_FLOOR, "square-wall", "plan-angle"],
    ],
    ["a top alone", [], ["C.foot", "C.top"], "C.top", ["full-height"]],
    [
      "the far top of a square wall",
      [],
      ["A.foot", "A.top", "B.foot", "B.top"],
      "B.top",
      ["full-height", "parallel-top"],
    ],
    [
      "the far top of a raking wall",
      ["C.foot", "C.top"],
      ["D.foot", "D.top"],
      "D.top",
      ["full-height", "level-top", "parallel-top", "top-to-centre"],
    ],
    ["the far top with only the near foot there", [], ["C.foot", "D.foot", "D.top"], "D.top", ["full-height"]],
  ])("%s", (_, given, marks, of, expected) => {
    const exercise = house({ plan, task: { given, marks } });
    expect([...speaking(exercise, of)].sort()).toEqual([...expected].sort());
  });

  it("borrows no vanishing point where no other wall rakes, nor the CVP, nor its own", () => {
    const exercise = house({ plan, task: { marks: ["C.foot", "D.foot"] } });
    expect(placesOf("borrowed-vanishing-point", askedFor(exercise, "D.foot"))).toEqual({});
  });

  it("borrows the vanishing point of parallel walls once", () => {
    // W4 and W5 run as (1, 1) both; W3 as (1, 3)
    const more = {
      corners: { ...plan.corners, E: [3, 7], F: [-3, 4], G: [-2, 5] },
      walls: [...plan.walls, { id: "W4", from: "D", to: "E", height: 3 }, { id: "W5", from: "F", to: "G", height: 3 }],
    };
    const exercise = house({ plan: more, task: { marks: ["C.foot", "D.foot"] } });
    expect(Object.keys(placesOf("borrowed-vanishing-point", askedFor(exercise, "D.foot")))).toEqual(["W4"]);
  });

  it("asks a raking wall's foot on a base as well: its line is drawn all the same", () => {
    const raised = { ...plan, walls: plan.walls.map((wall) => ({ ...wall, base: 0.4 })) };
    const exercise = house({ plan: raised, task: { marks: ["C.foot", "D.foot"] } });
    expect([...speaking(exercise, "D.foot")].sort()).toEqual(["plan-angle", "square-wall"]);
  });
});

describe("the near end, of several", () => {
  // B has a neighbour on each side, both raking.
  const both = {
    corners: { A: [-3, 1], B: [-1, 4], C: [2, 6] },
    walls: [
      { id: "W1", from: "A", to: "B", height: 3 },
      { id: "W2", from: "B", to: "C", height: 3 },
    ],
  };
  const near = (given: readonly string[], marks: readonly string[]) =>
    askedFor(house({ plan: both, task: { given, marks } }), "B.foot").near?.wall.id;

  it.each<[what: string, given: readonly string[], marks: readonly string[], wall: string | undefined]>([
    ["is the one put there last", [], ["A.foot", "C.foot", "B.foot"], "W2"],
    ["is the one put there last, whichever it is", [], ["C.foot", "A.foot", "B.foot"], "W1"],
    ["is a marked one before a given one", ["C.foot"], ["A.foot", "B.foot"], "W1"],
    ["is none where neither is there", [], ["B.foot"], undefined],
  ])("%s", (_, given, marks, wall) => {
    expect(near(given, marks)).toBe(wall);
  });
});
