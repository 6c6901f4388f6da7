import { describe, expect, it } from "vitest";
import { mitreWall } from "@/lib/plan/mitre-wall";
import type { Wall } from "@/lib/plan/plan";
import type { Face } from "@/lib/plan/solids/solid";
import { solidsOfPlan } from "@/lib/plan/solids/solids-of-plan";
import { wallLine } from "@/lib/plan/wall-line";
import type { StagePoint } from "@/lib/stage/frame";
import { planOf, wallAB } from "../../drawing/fixtures/plan-of";
import { expectNear, faceOf, normalOf, oneWall } from "./one-wall";

const LEVEL = { rake: 0 };
const RAKED = { rake: 1 / 20 };

describe("a wall as a solid", () => {
  it("of no thickness is one face, turned onstage, with four edges", () => {
    const { faces, lines } = solidsOfPlan(oneWall({}), LEVEL);
    expect(faces.map(({ id }) => id)).toEqual(["W"]);
    expect(lines).toHaveLength(4);
    expectNear(normalOf(faces[0] as Face) as StagePoint, [0, -1, 0]);
  });

  it("with a thickness is a box standing on the floor: two faces, a top and two ends, twelve edges", () => {
    const { faces, lines } = solidsOfPlan(oneWall({ thickness: 0.15 }), LEVEL);
    expect(faces.map(({ id }) => id).sort()).toEqual(["W", "W.back", "W.end.from", "W.end.to", "W.top"]);
    expect(lines).toHaveLength(12);
    const onFloor = lines.filter(({ from, to }) => from[2] === 0 && to[2] === 0);
    expect(onFloor).toHaveLength(4);
    for (const line of lines) expect(line.faces).toHaveLength(onFloor.includes(line) ? 1 : 2);
  });

  it("turns its drawn face onstage whichever hand that is", () => {
    for (const [onstage, y] of [
      ["right", -1],
      ["left", 1],
    ] as const) {
      const solid = solidsOfPlan(oneWall({ thickness: 0.15, onstage }), LEVEL);
      expect(normalOf(faceOf(solid, "W"))[1]).toBeCloseTo(y, 9);
      expect(normalOf(faceOf(solid, "W.back"))[1]).toBeCloseTo(-y, 9);
      expect(normalOf(faceOf(solid, "W.top"))[2]).toBeCloseTo(1, 9);
    }
  });

  it("is mitred with the thick wall it meets, both backs and tops ending in the plan's own mitre corner", () => {
    const walls = [
      wallAB({ id: "W1", thickness: 0.15 }),
      wallAB({ id: "W2", from: "B", to: "C", thickness: 0.3, height: 4 }),
    ];
    const plan = planOf({ corners: { A: [-4, 1], B: [-2, 5], C: [3, 5] }, walls });
    const solid = solidsOfPlan(plan, LEVEL);
    const { at, mitred } = mitreWall(plan, walls[1] as Wall, wallLine(plan, walls[1] as Wall) as never, "from");
    expect(mitred).toBe(true);
    for (const id of ["W1.back", "W2.back"]) {
      const gaps = faceOf(solid, id).outline.map(([x, y]) => Math.hypot(x - at[0], y - at[1]));
      expect(Math.min(...gaps)).toBeLessThan(1e-9);
    }
    expect(solid.faces.map(({ id }) => id)).not.toContain("W1.end.to");
    expect(solid.faces.map(({ id }) => id)).not.toContain("W2.end.from");
    const upright = solid.lines.find(({ from, to }) => from[0] === -2 && from[1] === 5 && to[0] === -2 && to[1] === 5);
    expect(upright?.faces.map((place) => solid.faces[place]?.id).sort()).toEqual(["W1", "W2"]);
    expect(solid.lines.filter(({ faces }) => faces.every((f) => solid.faces[f]?.id.endsWith(".top")))).toEqual([]);
  });

  it("closes its mitred end over the top of a lower neighbour", () => {
    const walls = [
      wallAB({ id: "W1", thickness: 0.15 }),
      wallAB({ id: "W2", from: "B", to: "C", thickness: 0.15, height: 3 }),
    ];
    const solid = solidsOfPlan(planOf({ corners: { A: [-4, 1], B: [-2, 5], C: [3, 5] }, walls }), LEVEL);
    const end = faceOf(solid, "W1.end.to");
    expect([...new Set(end.outline.map(([, , z]) => z))].sort()).toEqual([3, 4]);
  });

  it("is butted where it meets a wall of no thickness: its end is square across", () => {
    const walls = [wallAB({ id: "W1", thickness: 0.15 }), wallAB({ id: "W2", from: "B", to: "C" })];
    const solid = solidsOfPlan(planOf({ corners: { A: [-3, 2], B: [3, 2], C: [5, 6] }, walls }), LEVEL);
    const xs = faceOf(solid, "W1.end.to").outline.map(([x]) => x);
    for (const x of xs) expect(x).toBeCloseTo(3, 9);
  });

  it("follows a raked floor and bends with it at the plaster line", () => {
    const wall = wallAB({ thickness: 0.1 });
    const solid = solidsOfPlan(planOf({ corners: { A: [-3, -1], B: [-3, 4] }, walls: [wall] }), RAKED);
    const foot = faceOf(solid, "W").outline.filter(([, , z]) => z < 1);
    expect(foot.map(([, y, z]) => [y, z]).sort((a, b) => (a[0] as number) - (b[0] as number))).toEqual([
      [-1, 0],
      [0, 0],
      [4, 0.2],
    ]);
  });

  it("that cannot stand is left out", () => {
    expect(solidsOfPlan(planOf({ corners: { A: [0, 0] }, walls: [wallAB({})] }), LEVEL)).toEqual({
      faces: [],
      lines: [],
    });
    expect(solidsOfPlan(planOf({ corners: { A: [0, 0], B: [0, 0] }, walls: [wallAB({})] }), LEVEL).faces).toEqual([]);
  });
});
