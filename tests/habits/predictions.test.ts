import { describe, expect, it } from "vitest";
import type { PicturePoint } from "@/lib/stage/frame";
import { expectPlaces, type Places } from "./expect-places";
import { askedFor, house, placesOf } from "./house";

const floor = { plan: { corners: { Q: [1, 2] } }, task: { marks: ["Q.foot"] } };

describe("a place on the floor, (1, 2): s = 8/10, drawn at (0.8, 0.4)", () => {
  it.each<[id: string, amount: number | null, expected: Places]>([
    // Z = Z_b y/depth = 1 x 2/8; X on the ray, 1 x (1 - 0.25/2)
    ["plan-depth", null, { "": [0.875, 0.25] }],
    // (1, 0.5 x 2): s = 8/9
    ["too-shallow", 0.5, { "": [8 / 9, 2 / 9] }],
    // (1, 2 x 2): s = 8/12
    ["too-deep", 2, { "": [2 / 3, 2 / 3] }],
    // (1, 8 - 2): s = 8/14
    ["from-back-wall", null, { "": [4 / 7, 6 / 7] }],
    // X = x, Z as it should be
    ["full-width", null, { "": [1, 0.4] }],
    ["wrong-side", null, { "": [-0.8, 0.4] }],
    // x = 8/2 - 1 = 3, times 0.8
    ["from-the-jamb", null, { "": [2.4, 0.4] }],
    // (0.5, 2): s = 0.8; (0.5, 1): s = 8/9
    ["half-scale", null, { offset: [0.4, 0.4], both: [4 / 9, 2 / 9] }],
    // (2, 2): s = 0.8; (2, 4): s = 2/3
    ["double-scale", null, { offset: [1.6, 0.4], both: [4 / 3, 2 / 3] }],
  ])("%s", (id, amount, expected) => {
    expectPlaces(placesOf(id, askedFor(house(floor), "Q.foot"), amount), expected);
  });
});

describe("with the eye 1 m to the right, (3, 2): X = 1 + 2 x 0.8 = 2.6, Z = 0.4", () => {
  it.each<[id: string, expected: PicturePoint]>([
    // X = 1 + (3 - 1)(1 - 0.25/2)
    ["plan-depth", [2.75, 0.25]],
    ["full-width", [3, 0.4]],
    // (-3, 2): 1 + (-4) x 0.8
    ["wrong-side", [-2.2, 0.4]],
    // (4 - 3, 2): the eye's own offset, so straight up the page
    ["from-the-jamb", [1, 0.4]],
    // (3, 6): 1 + 2 x 4/7
    ["from-back-wall", [15 / 7, 6 / 7]],
  ])("%s", (id, expected) => {
    const exercise = house({ ...floor, plan: { corners: { Q: [3, 2] } }, viewer: { offset: 1 } });
    expectPlaces(placesOf(id, askedFor(exercise, "Q.foot")), { "": expected });
  });
});

describe("on a rake of 1:20, (1, 2, 0.1): Z = 2 - 1.9 x 0.8 = 0.48", () => {
  it.each<[id: string, amount: number | null, expected: PicturePoint]>([
    // the back wall's foot is 0.4 up: Z_b = 2 - 1.6/2 = 1.2, a quarter of it 0.3; the rays run to 2 + 8/20 = 2.4
    ["plan-depth", null, [1 - 0.3 / 2.4, 0.3]],
    // (1, 4, 0.2): s = 2/3, Z = 2 - 1.8 x 2/3
    ["too-deep", 2, [2 / 3, 0.8]],
    // (1, 6, 0.3): s = 4/7, Z = 2 - 1.7 x 4/7
    ["from-back-wall", null, [4 / 7, 2 - (1.7 * 4) / 7]],
    // (1, 2, 0)
    ["flat-floor", null, [0.8, 0.4]],
    ["full-width", null, [1, 0.48]],
  ])("%s", (id, amount, expected) => {
    const exercise = house({ ...floor, stage: { rake: "1:20" } });
    expectPlaces(placesOf(id, askedFor(exercise, "Q.foot"), amount), { "": expected });
  });
});

describe("before the plaster line, (1, -1): s = 8/7", () => {
  const exercise = house({ ...floor, plan: { corners: { Q: [1, -1] } } });
  it.each<[id: string, amount: number | null, expected: PicturePoint]>([
    // (1, 1): s = 8/9
    ["behind-instead", null, [8 / 9, 2 / 9]],
    // Z = 1 x (-1)/8; X = 1 x (1 + 0.125/2)
    ["plan-depth", null, [1.0625, -0.125]],
    // (1, -2): s = 8/6
    ["too-deep", 2, [4 / 3, -2 / 3]],
    ["full-width", null, [1, 2 - 16 / 7]],
  ])("%s", (id, amount, expected) => {
    expectPlaces(placesOf(id, askedFor(exercise, "Q.foot"), amount), { "": expected });
  });

  it("flat-floor says nothing there on a rake: the apron is level", () => {
    const raked = house({ ...floor, plan: { corners: { Q: [1, -1] } }, stage: { rake: "1:20" } });
    expectPlaces(placesOf("flat-floor", askedFor(raked, "Q.foot")), {});
    // and the apron's rays run to the CVP: Z_b = 1.2, an eighth of it, X = 1 + 0.15/2
    expectPlaces(placesOf("plan-depth", askedFor(raked, "Q.foot")), { "": [1.075, -0.15] });
  });
});

/**
 * A wall 3 m high from A on the plaster line, drawn at (2, 0) and (2, 3), to B (3, 2), drawn at (2.4, 0.4) and (2.4, 2.8);
 * and one from B to C (1, 6), whose direction (-2, 4) vanishes at (-4, 2).
 */
const walls = {
  plan: {
    corners: { A: [2, 0], B: [3, 2], C: [1, 6] },
    walls: [
      { id: "W1", from: "A", to: "B", height: 3 },
      { id: "W2", from: "B", to: "C", height: 3 },
    ],
  },
  task: { marks: ["A.foot", "A.top", "B.foot", "B.top"] },
};

describe("the far end of a raking wall", () => {
  it.each<[id: string, point: string, expected: Places]>([
    // from (2, 0) to the CVP (0, 2), a fifth of the way
    ["square-wall", "B.foot", { "": [1.6, 0.4] }],
    // from (2, 0) as 1 across to 2 up
    ["plan-angle", "B.foot", { "": [2.2, 0.4] }],
    // from (2, 0) to (-4, 2), a fifth of the way
    ["borrowed-vanishing-point", "B.foot", { W2: [0.8, 0.4] }],
    // from (2, 3) to (-4, 2) run back to X = 2.4: 3 + 0.4/6
    ["borrowed-vanishing-point", "B.top", { W2: [2.4, 3 + 0.4 / 6] }],
    // from (2, 3) to (0, 2) run back to X = 2.4: 3 + 0.4/2
    ["top-to-centre", "B.top", { "": [2.4, 3.2] }],
    ["level-top", "B.top", { "": [2.4, 3] }],
    // 0.4 + (3 - 0)
    ["parallel-top", "B.top", { "": [2.4, 3.4] }],
    // 0.4 + 3
    ["full-height", "B.top", { "": [2.4, 3.4] }],
  ])("%s at %s", (id, point, expected) => {
    expectPlaces(placesOf(id, askedFor(house(walls), point)), expected);
  });
});

describe("where the drawing goes on from the student's own marks", () => {
  const drawn = { "A.foot": [2.1, 0.1], "A.top": [2.1, 3.2], "B.foot": [2.5, 0.5] } as const;
  const own = house({ ...walls, task: { ...walls.task, goOnFrom: "own" } });

  it.each<[id: string, point: string, expected: Places]>([
    // from (2.1, 0.1) to (0, 2), up to 0.4: (0.4 - 0.1)/1.9 of the way
    ["square-wall", "B.foot", { "": [2.1 * (1 - 0.3 / 1.9), 0.4] }],
    // from (2.1, 0.1), 0.3 up at 1 in 2
    ["plan-angle", "B.foot", { "": [2.25, 0.4] }],
    // from (2.1, 0.1) to (-4, 2): 2.1 - 6.1 x 0.3/1.9
    ["borrowed-vanishing-point", "B.foot", { W2: [2.1 - (6.1 * 0.3) / 1.9, 0.4] }],
    // from (2.1, 3.2) to (0, 2) at X = 2.5: 3.2 + 0.4 x 1.2/2.1
    ["top-to-centre", "B.top", { "": [2.5, 3.2 + (0.4 * 1.2) / 2.1] }],
    ["level-top", "B.top", { "": [2.5, 3.2] }],
    // 0.5 + (3.2 - 0.1)
    ["parallel-top", "B.top", { "": [2.5, 3.6] }],
    // 0.5 + 3
    ["full-height", "B.top", { "": [2.5, 3.5] }],
  ])("%s at %s goes on from them", (id, point, expected) => {
    expectPlaces(placesOf(id, askedFor(own, point, drawn)), expected);
  });

  it.each(["square-wall", "plan-angle"])("%s goes on from the true ones where the task says so", (id) => {
    const asked = (marks: typeof drawn | undefined) => placesOf(id, askedFor(house(walls), "B.foot", marks));
    expect(asked(drawn)).toEqual(asked(undefined));
  });
});
