import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { indexThings, thingAt, thingsAt, thingsWithin } from "@/lib/draft/snapping/thing-at";
import { distanceToSegment } from "@/lib/geometry/segments-cross";
import { wallLine } from "@/lib/plan/wall-line";
import { opening, planOf, wallAB } from "../../drawing/fixtures/plan-of";
import { seeded } from "../../seeded";

const plan = planOf({
  corners: { A: [-4, 3], B: [4, 3] },
  // Onstage is to the right of A -> B, downstage: the thickness goes upstage, to y = 3.2.
  walls: [wallAB({ id: "W1", thickness: 0.2, openings: [opening({ id: "door", at: 3, width: 1 })] })],
  platforms: [
    {
      id: "P1",
      outline: [
        [0, 0],
        [3, 0],
        [3, 2],
        [0, 2],
      ],
      height: 0.2,
      base: 0,
    },
  ],
  furniture: [
    { id: "table", kind: "table", at: [1, 1], turn: Math.PI / 4, width: 1, depth: 1, height: 0.7, base: 0.2 },
  ],
  columns: [{ id: "K1", at: [-2, 1], diameter: 0.4, height: 3, base: 0 }],
  stairs: [
    {
      id: "S1",
      nosing: [
        [-4, -1],
        [-3, -1],
      ],
      steps: 3,
      tread: 0.3,
      riser: 0.15,
      base: 0,
    },
  ],
  masking: [
    {
      id: "leg",
      kind: "leg",
      line: [
        [-6, 1],
        [-5, 1],
      ],
      trim: null,
      height: 5,
    },
  ],
});
const index = indexThings(plan);

describe("thingAt", () => {
  it.each([
    { at: [-3.95, 3.05], expected: { kind: "corner", id: "A" } },
    { at: [-0.5, 3.1], expected: { kind: "opening", wall: "W1", id: "door" } },
    { at: [2, 3.15], expected: { kind: "wall", id: "W1" } },
    { at: [2, 2.95], expected: { kind: "wall", id: "W1" } },
    { at: [1, 1], expected: { kind: "furniture", id: "table" } },
    { at: [2.5, 1], expected: { kind: "platform", id: "P1" } },
    { at: [-1.85, 1], expected: { kind: "column", id: "K1" } },
    { at: [-3.5, -0.2], expected: { kind: "stair", id: "S1" } },
    { at: [-5.5, 1.05], expected: { kind: "masking", id: "leg" } },
    { at: [-2, 2], expected: null },
  ] as const)("finds $expected at $at", ({ at, expected }) => {
    expect(thingAt(index, at, 0.1)).toEqual(expected);
  });

  it("lists what lies under it, for choosing again", () => {
    expect(thingsAt(index, [1, 1], 0.1).map(({ id }) => id)).toEqual(["table", "P1"]);
  });

  it("finds nothing on an empty plan", () => {
    expect(thingAt(indexThings(planOf({})), [0, 0], 1)).toBeNull();
    expect(thingsWithin(indexThings(planOf({})), [0, 0], [1, 1])).toEqual([]);
  });

  it("among many walls finds what a search through all of them finds", () => {
    const coordinate = fc.double({ min: -8, max: 8, noNaN: true });
    const place = fc.tuple(coordinate, coordinate);
    fc.assert(
      fc.property(fc.array(place, { minLength: 2, maxLength: 60 }), place, (places, at) => {
        const names = places.map((_, i) => `C${i}`);
        const many = planOf({
          corners: Object.fromEntries(places.map((p, i) => [`C${i}`, p])),
          walls: names.slice(1).map((to, i) => wallAB({ id: `W${i}`, from: `C${i}`, to })),
        });
        const found = thingsAt(indexThings(many), at, 0.5).filter(({ kind }) => kind === "wall");
        const all = many.walls.filter((wall) => {
          const line = wallLine(many, wall);
          return line && distanceToSegment(at, [line.from, line.to]) <= 0.5;
        });
        expect(new Set(found.map(({ id }) => id))).toEqual(new Set(all.map(({ id }) => id)));
      }),
      seeded,
    );
  });
});

describe("thingsWithin", () => {
  it("lists what lies wholly inside a rectangle, drawn from any corner", () => {
    const ids = thingsWithin(index, [3.5, 2.5], [-2.5, -0.5]).map(({ id }) => id);
    expect(ids).toEqual(["K1", "table", "P1"]);
  });
});
