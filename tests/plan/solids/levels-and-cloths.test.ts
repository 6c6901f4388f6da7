import { describe, expect, it } from "vitest";
import { planeOf } from "@/lib/geometry/plane";
import { namePoints } from "@/lib/plan/name-points";
import type { Masking, Stair } from "@/lib/plan/plan";
import { curvePieces } from "@/lib/plan/solids/curve-pieces";
import { solidsOfPlan } from "@/lib/plan/solids/solids-of-plan";
import { landsOnPlatform } from "@/lib/plan/stair-landing";
import { planOf } from "../../drawing/fixtures/plan-of";
import { expectClosed, volume } from "./expect-closed";

const LEVEL = { rake: 0 };
const RAKED = { rake: 1 / 18 };
const FLIGHT: Stair = {
  id: "S",
  nosing: [
    [0, 2],
    [1.2, 2],
  ],
  steps: 3,
  tread: 0.3,
  riser: 0.15,
  base: 0,
};
const LANDING = {
  id: "P",
  outline: [
    [0, 2.6],
    [1.2, 2.6],
    [1.2, 4],
    [0, 4],
  ],
  height: 0.45,
  base: 0,
} as const;

describe("a flight as solid steps", () => {
  it("standing free has as many treads as risers, two sides and a back", () => {
    const { faces } = solidsOfPlan(planOf({ stairs: [FLIGHT] }), LEVEL);
    expect(faces.map(({ id }) => id).sort()).toEqual(
      [
        "S.back",
        "S.riser.1",
        "S.riser.2",
        "S.riser.3",
        "S.side.end",
        "S.side.start",
        "S.tread.1",
        "S.tread.2",
        "S.tread.3",
      ].sort(),
    );
    for (const { id, outline } of faces) {
      const normal = planeOf(outline)?.normal;
      if (id.includes("riser")) expect(normal?.[1]).toBeCloseTo(-1, 9);
      if (id.includes("tread")) expect(normal?.[2]).toBeCloseTo(1, 9);
      if (id.includes("back")) expect(normal?.[1]).toBeCloseTo(1, 9);
    }
  });

  it("that lands on a platform of its level ends there", () => {
    const plan = planOf({ stairs: [FLIGHT], platforms: [LANDING] });
    expect(landsOnPlatform(plan, FLIGHT, LEVEL)).toBe(true);
    const ids = solidsOfPlan(plan, LEVEL).faces.map(({ id }) => id);
    expect(ids).toContain("S.riser.3");
    expect(ids).not.toContain("S.tread.3");
    expect(landsOnPlatform({ platforms: [{ ...LANDING, height: 0.6 }] }, FLIGHT, LEVEL)).toBe(false);
  });

  for (const stage of [LEVEL, RAKED])
    it(`holds the volume of its steps and has every nosing as an edge, rake ${stage.rake.toFixed(2)}`, () => {
      const plan = planOf({ stairs: [FLIGHT] });
      const solid = solidsOfPlan(plan, stage);
      // Steps less the wedge of floor under them; the floor closes the body, so its outlines are counted with it.
      const steps = 1.2 * 0.3 * 0.15 * (1 + 2 + 3);
      const wedge = (1.2 * 0.9 * 0.9 * stage.rake) / 2;
      const ground = 2 * stage.rake;
      const floor = { id: "floor", element: "S", kind: "stair", holes: [] } as const;
      const [far, lift] = [2.9, 2.9 * stage.rake];
      const under = {
        ...floor,
        outline: [
          [0, 2, ground],
          [0, far, lift],
          [1.2, far, lift],
          [1.2, 2, ground],
        ] as const,
      };
      expect(volume([...solid.faces, under])).toBeCloseTo(steps - wedge, 9);
      for (const [name, { at }] of namePoints(plan, stage)) {
        const gaps = solid.lines.flatMap(({ from, to }) =>
          [from, to].map((p) => Math.hypot(p[0] - at[0], p[1] - at[1], p[2] - at[2])),
        );
        expect(Math.min(...gaps), name).toBeLessThan(1e-9);
      }
    });

  it("of no width is left out", () => {
    const flat: Stair = { ...FLIGHT, nosing: [FLIGHT.nosing[0], FLIGHT.nosing[0]] };
    expect(solidsOfPlan(planOf({ stairs: [flat] }), LEVEL)).toEqual({ faces: [], lines: [] });
  });
});

describe("a platform as a solid", () => {
  for (const [way, outline] of [
    ["counter-clockwise", LANDING.outline],
    ["clockwise", [...LANDING.outline].reverse()],
  ] as const)
    it(`is closed and turned outside out, listed ${way}`, () => {
      for (const stage of [LEVEL, RAKED])
        expectClosed(solidsOfPlan(planOf({ platforms: [{ ...LANDING, outline }] }), stage));
    });
});

describe("a column as a solid", () => {
  const column = { id: "K", at: [1, 3], diameter: 0.4, height: 3, base: 0 } as const;

  it("is closed, its corners on the circle and its sides no farther from it than a fifth of a millimetre", () => {
    const solid = solidsOfPlan(planOf({ columns: [column] }), RAKED);
    expectClosed(solid);
    const top = solid.faces.find(({ id }) => id === "K.top")?.outline ?? [];
    expect(top).toHaveLength(curvePieces(0.2));
    for (const [i, [x, y]] of top.entries()) {
      expect(Math.hypot(x - 1, y - 3)).toBeCloseTo(0.2, 9);
      const [u, v] = top[(i + 1) % top.length] ?? [x, y];
      expect(0.2 - Math.hypot((x + u) / 2 - 1, (y + v) / 2 - 3)).toBeLessThan(2e-4);
    }
    expect(solid.lines.filter(({ kind }) => kind === "smooth")).toHaveLength(top.length);
  });
});

describe("masking as cloths", () => {
  const cloth = (parts: Partial<Masking>): Masking => ({
    id: "M",
    kind: "leg",
    line: [
      [-5, 2],
      [-3, 2],
    ],
    trim: null,
    height: 6,
    ...parts,
  });

  it.each([
    ["a leg", cloth({}), true],
    ["a border", cloth({ kind: "border", trim: 4, height: 2 }), true],
    ["a backing", cloth({ kind: "backing" }), false],
  ])("%s is one face between its named points, with folds only where cloth hangs", (_, masking, folds) => {
    for (const stage of [LEVEL, RAKED]) {
      const plan = planOf({ masking: [masking] });
      const { faces, lines } = solidsOfPlan(plan, stage);
      expect(faces).toHaveLength(1);
      expect(lines.some(({ kind }) => kind === "detail")).toBe(folds);
      const outline = faces[0]?.outline ?? [];
      expect(planeOf(outline)?.normal[1]).toBeCloseTo(-1, 9);
      for (const [name, { at }] of namePoints(plan, stage))
        expect(
          Math.min(...outline.map((p) => Math.hypot(p[0] - at[0], p[1] - at[1], p[2] - at[2]))),
          name,
        ).toBeLessThan(1e-9);
    }
  });
});
