import { describe, expect, it } from "vitest";
import { heightOver, planeOf } from "@/lib/geometry/plane";
import { dot3 } from "@/lib/geometry/vector3";
import { namePoints } from "@/lib/plan/name-points";
import type { Opening } from "@/lib/plan/plan";
import { AJAR, LEAF_M } from "@/lib/plan/solids/door-leaf";
import { solidsOfPlan } from "@/lib/plan/solids/solids-of-plan";
import type { StagePoint } from "@/lib/stage/frame";
import { opening, planOf, wallAB } from "../../drawing/fixtures/plan-of";
import { expectNear, faceOf, normalOf, oneWall } from "./one-wall";

const LEVEL = { rake: 0 };
const RAKED = { rake: 1 / 20 };

describe("an opening through a solid wall", () => {
  const cases: readonly [string, Partial<Opening>, number][] = [
    ["a window", { kind: "window", at: 1.2, width: 1.5, sill: 0.9, head: 2.2 }, 0],
    ["a window in a thick wall", { kind: "window", at: 1.2, width: 1.5, sill: 0.9, head: 2.2 }, 0.15],
    ["a door", { kind: "door", at: 2, width: 0.9, head: 2.1 }, 0.15],
    ["a passage on a rake", { kind: "passage", at: 2, width: 1.4, head: 2.4 }, 0.3],
    ["a niche", { kind: "niche", at: 2, width: 1.2, head: 1, depth: 0.45 }, 0.15],
  ];
  for (const [name, parts, thickness] of cases)
    for (const stage of [LEVEL, RAKED])
      it(`${name} has its corners at the named points, rake ${stage.rake.toFixed(2)}`, () => {
        const corners = { A: [-3, 2], B: [1, 6] } as const;
        const plan = planOf({ corners, walls: [wallAB({ thickness, openings: [opening(parts)] })] });
        const face = faceOf(solidsOfPlan(plan, stage), "W");
        const ring = face.holes[0] ?? face.outline;
        const points = namePoints(plan, stage);
        for (const corner of ["start.sill", "start.head", "end.sill", "end.head"]) {
          const [x, y, z] = points.get(`W.o.${corner}`)?.at ?? [0, 0, 0];
          const gaps = ring.map((p) => Math.hypot(p[0] - x, p[1] - y, p[2] - z));
          expect(Math.min(...gaps), corner).toBeLessThan(1e-9);
        }
        expect(face.holes).toHaveLength((parts.sill ?? 0) > 0 ? 1 : 0);
      });

  it("has jambs, head and sill as deep as the wall, turned into the opening, and none in a wall of no thickness", () => {
    const window: Partial<Opening> = { kind: "window", at: 2, width: 1, sill: 1, head: 2 };
    const thick = solidsOfPlan(oneWall({ thickness: 0.2 }, [window]), LEVEL);
    const expected = { "jamb.start": [1, 0, 0], "jamb.end": [-1, 0, 0], head: [0, 0, -1], sill: [0, 0, 1] };
    for (const [part, normal] of Object.entries(expected)) {
      const face = faceOf(thick, `W.o.${part}`);
      expectNear(normalOf(face) as StagePoint, normal);
      const ys = face.outline.map(([, y]) => y);
      expect(Math.max(...ys) - Math.min(...ys)).toBeCloseTo(0.2, 9);
    }
    const thin = solidsOfPlan(oneWall({}, [window]), LEVEL);
    expect(thin.faces.filter(({ kind, id }) => kind === "reveal" && !id.includes("board"))).toEqual([]);
  });

  it("up to the wall's top parts the wall in two", () => {
    const solid = solidsOfPlan(oneWall({ thickness: 0.1 }, [{ kind: "passage", at: 2, width: 1, head: 4 }]), LEVEL);
    const ids = solid.faces.map(({ id }) => id);
    expect(ids).toEqual(expect.arrayContaining(["W.1", "W.2", "W.back.1", "W.back.2", "W.top.1", "W.top.2"]));
    expect(ids).not.toContain("W.o.head");
  });

  it("past its wall's end is cut no farther than the end", () => {
    const solid = solidsOfPlan(oneWall({ thickness: 0.1 }, [{ kind: "passage", at: 5, width: 4, head: 2 }]), LEVEL);
    for (const face of solid.faces) for (const [x] of face.outline) expect(Math.abs(x)).toBeLessThan(3.2);
  });

  it("arched is a half circle on its springing, its soffit smooth, and no edge between jamb and soffit", () => {
    const solid = solidsOfPlan(oneWall({ thickness: 0.3 }, [{ kind: "arch", at: 2, width: 2, head: 3 }]), LEVEL);
    const curve = faceOf(solid, "W").outline.filter(([x, , z]) => z > 2.001 && z < 3.001 && Math.abs(x) < 1.001);
    expect(curve.length).toBeGreaterThan(24);
    for (const [x, , z] of curve) expect(Math.hypot(x, z - 2)).toBeCloseTo(1, 9);
    const across = solid.lines.filter(
      ({ from, to, faces }) =>
        from[1] !== to[1] && from[2] > 0 && faces.every((f) => solid.faces[f]?.id.startsWith("W.o.")),
    );
    expect(across.length).toBeGreaterThan(24);
    for (const { kind } of across) expect(kind).toBe("smooth");
  });

  it("as a niche has a back at its depth and goes through no wall it is shallower than", () => {
    for (const [depth, holes] of [
      [0.1, 0],
      [0.45, 1],
    ] as const) {
      const plan = oneWall({ thickness: 0.2 }, [{ kind: "niche", at: 2, width: 1, sill: 0.5, head: 1.5, depth }]);
      const solid = solidsOfPlan(plan, LEVEL);
      for (const [, y] of faceOf(solid, "W.o.back").outline) expect(y).toBeCloseTo(2 + depth, 9);
      expect(faceOf(solid, "W.back").holes).toHaveLength(holes);
    }
  });
});

describe("a door's leaf", () => {
  const hung: readonly [string, Partial<Opening>, readonly [number, number][]][] = [
    ["at its start jamb, offstage", { hinge: "start", swing: "offstage" }, [[-1, 2.1]]],
    ["at its end jamb, offstage", { hinge: "end", swing: "offstage" }, [[0, 2.1]]],
    ["at its start jamb, onstage", { hinge: "start", swing: "onstage" }, [[-1, 2]]],
    [
      "as a pair",
      { leaves: 2, swing: "offstage" },
      [
        [-1, 2.1],
        [0, 2.1],
      ],
    ],
  ];
  for (const [name, parts, hinges] of hung)
    it(`hangs ${name}, as long as its share of the opening, ajar by the fixed angle`, () => {
      const solid = solidsOfPlan(oneWall({ thickness: 0.1 }, [{ at: 2, width: 1, ...parts }]), LEVEL);
      const leaves = solid.faces.filter(({ id }) => /\.leaf(\.(start|end))?\.top$/.test(id));
      expect(leaves).toHaveLength(hinges.length);
      const out = parts.swing === "onstage" ? -1 : 1;
      leaves.forEach(({ outline }, i) => {
        const hinge = hinges[i] as readonly [number, number];
        const gaps = outline.map(([x, y]) => Math.hypot(x - hinge[0], y - hinge[1]));
        expect(Math.min(...gaps)).toBeLessThan(1e-9);
        const length = 1 / hinges.length;
        expect(Math.max(...gaps)).toBeCloseTo(Math.hypot(length, LEAF_M), 9);
        const free = outline.find(([x, y]) => Math.abs(Math.hypot(x - hinge[0], y - hinge[1]) - length) < 1e-9);
        expect(((free?.[1] ?? 0) - hinge[1]) * out).toBeCloseTo(length * Math.sin(AJAR), 9);
        const intoOpening = hinge[0] === -1 ? 1 : -1;
        expect(((free?.[0] ?? 0) - hinge[0]) * intoOpening).toBeCloseTo(length * Math.cos(AJAR), 9);
      });
    });

  it("hangs on the upstage jamb when the plan says nothing", () => {
    const corners = { A: [-3, 2], B: [-1, 6] } as const;
    const plan = planOf({ corners, walls: [wallAB({ openings: [opening({ at: 1 })] })] });
    const end = namePoints(plan, LEVEL).get("W.o.end.head")?.at ?? [0, 0, 0];
    const gaps = faceOf(solidsOfPlan(plan, LEVEL), "W.o.leaf.top").outline.map(([x, y]) =>
      Math.hypot(x - end[0], y - end[1]),
    );
    expect(Math.min(...gaps)).toBeLessThan(1e-9);
  });

  it("has its panels and knob on its own two sides", () => {
    const solid = solidsOfPlan(oneWall({ thickness: 0.1 }, [{ at: 2, width: 1 }]), LEVEL);
    const details = solid.lines.filter(({ id }) => id.includes(".leaf.") && id.match(/panel|low|high|knob/));
    expect(details).toHaveLength(24);
    for (const { from, to, faces } of details) {
      const plane = planeOf(solid.faces[faces[0] as number]?.outline ?? []);
      expect(plane && Math.abs(heightOver(plane, from)) + Math.abs(heightOver(plane, to))).toBeLessThan(1e-9);
    }
  });
});

describe("what fills a window", () => {
  it("is one flat sash in the middle of the wall with four lights to see through", () => {
    const solid = solidsOfPlan(
      oneWall({ thickness: 0.2 }, [{ kind: "window", at: 2, width: 1, sill: 1, head: 2 }]),
      LEVEL,
    );
    const sash = faceOf(solid, "W.o.sash");
    expect(sash.holes).toHaveLength(4);
    for (const [, y] of sash.outline) expect(y).toBeCloseTo(2.1, 9);
    const area = (ring: readonly StagePoint[]) => {
      const [xs, zs] = [ring.map(([x]) => x), ring.map(([, , z]) => z)];
      return (Math.max(...xs) - Math.min(...xs)) * (Math.max(...zs) - Math.min(...zs));
    };
    expect(sash.holes.reduce((sum, hole) => sum + area(hole), 0)).toBeGreaterThan(0.6 * area(sash.outline));
  });
});

describe("rings", () => {
  it("of holes run against their outline", () => {
    const solid = solidsOfPlan(
      oneWall({ thickness: 0.2 }, [{ kind: "window", at: 2, width: 1, sill: 1, head: 2 }]),
      LEVEL,
    );
    const holed = solid.faces.filter(({ holes }) => holes.length > 0);
    expect(holed.map(({ id }) => id).sort()).toEqual(["W", "W.back", "W.o.sash"]);
    for (const face of holed)
      for (const hole of face.holes)
        expect(dot3(normalOf(face), planeOf(hole)?.normal ?? [0, 0, 0])).toBeCloseTo(-1, 9);
  });
});
