import { describe, expect, it } from "vitest";
import { drawGuards } from "@/lib/drawing/plan-symbols/draw-guards";
import { letterPlatform } from "@/lib/drawing/plan-symbols/draw-platform";
import { drawStair, letterStair } from "@/lib/drawing/plan-symbols/draw-stair";
import { findDrops, GUARD_DROP_M } from "@/lib/drawing/plan-symbols/find-drops";
import { FOOT_M, INCH_M } from "@/lib/measure/length";
import type { Platform, Stair } from "@/lib/plan/plan";
import { insideOutline, surfaceLevel } from "@/lib/plan/surface-level";
import type { PlanPoint } from "@/lib/stage/frame";
import { firstOf, gap, lastOf, strokeOf } from "./fixtures/find-stroke";
import { opening, planOf, wallAB } from "./fixtures/plan-of";

const LEVEL = { rake: 0 };
const SQUARE: readonly PlanPoint[] = [
  [0, 0],
  [2, 0],
  [2, 2],
  [0, 2],
];

function platform(parts: Partial<Platform>): Platform {
  return { id: "P", outline: SQUARE, height: 1, base: 0, ...parts };
}

function stair(parts: Partial<Stair>): Stair {
  return {
    id: "S",
    nosing: [
      [0, 0],
      [1, 0],
    ],
    steps: 3,
    tread: 0.3,
    riser: 0.15,
    base: 0,
    ...parts,
  };
}

describe("drops from platforms", () => {
  it("counts a drop over 30 in, not one of 30 in", () => {
    // IBC 1015.2 (guards at drops of more than 30 in), from memory.
    expect(GUARD_DROP_M).toBeCloseTo(30 * INCH_M, 9);
    const at = (height: number) => findDrops(planOf({}), platform({ height }), LEVEL);
    expect(at(30 * INCH_M)).toEqual([]);
    expect(at(31 * INCH_M)).toHaveLength(4);
  });

  it.each([
    { name: "counter-clockwise", outline: SQUARE },
    { name: "clockwise", outline: SQUARE.toReversed() },
  ])("points back on to the platform for an outline that runs $name", ({ outline }) => {
    for (const { from, to, inward } of findDrops(planOf({}), platform({ outline }), LEVEL)) {
      const inside: PlanPoint = [(from[0] + to[0]) / 2 + inward[0] * 0.1, (from[1] + to[1]) / 2 + inward[1] * 0.1];
      expect(insideOutline(SQUARE, inside)).toBe(true);
    }
  });

  it("stops where a platform, a stair or a wall is beside the edge", () => {
    const low = platform({});
    const beside = platform({
      id: "Q",
      outline: [
        [2, 0],
        [4, 0],
        [4, 2],
        [2, 2],
      ],
      height: 0.5,
    });
    const sides = (plan: Parameters<typeof findDrops>[0]) => findDrops(plan, low, LEVEL).map(({ inward }) => inward);
    expect(sides(planOf({ platforms: [low, beside] }))).not.toContainEqual([-1, 0]);

    const flight = stair({
      nosing: [
        [0.5, -0.9],
        [1.5, -0.9],
      ],
      steps: 3,
      riser: 0.25,
    });
    const front = findDrops(planOf({ platforms: [low], stairs: [flight] }), low, LEVEL).filter(
      ({ inward }) => inward[1] === 1,
    );
    expect(front).toHaveLength(2);
    expect(front[0]?.to[0]).toBeCloseTo(0.5, 1);
    expect(front[1]?.from[0]).toBeCloseTo(1.5, 1);

    const corners: Record<string, PlanPoint> = { A: [0, 2], B: [2, 2] };
    const back = (wall: Parameters<typeof wallAB>[0]) =>
      findDrops(planOf({ corners, walls: [wallAB(wall)] }), low, LEVEL).filter(
        ({ inward }) => Math.abs(inward[1] + 1) < 1e-9,
      );
    expect(back({})).toEqual([]);
    expect(back({ height: 1.5 })).toHaveLength(1);
    expect(back({ openings: [opening({ at: 0.5 })] })).toHaveLength(1);
  });

  it("draws the rail dashed, inside the edge", () => {
    const [first] = drawGuards(planOf({}), platform({}), LEVEL, 48);
    expect(first).toMatchObject({ kind: "stroke", line: "hidden" });
    if (first?.kind === "stroke") for (const point of first.points) expect(point[1]).toBeGreaterThan(0);
  });
});

describe("levels to stand on", () => {
  it("is the highest of floor, platforms and treads", () => {
    const flight = stair({
      nosing: [
        [3, 0],
        [4, 0],
      ],
    });
    const plan = planOf({ platforms: [platform({}), platform({ id: "Q", height: 0.4 })], stairs: [flight] });
    const raked = { rake: 0.05 };
    expect(surfaceLevel(plan, raked, [9, 4])).toBeCloseTo(0.2, 9);
    expect(surfaceLevel(plan, LEVEL, [1, 1])).toBe(1);
    // The second tread: two risers up.
    expect(surfaceLevel(plan, LEVEL, [3.5, 0.45])).toBeCloseTo(0.3, 9);
    expect(surfaceLevel(plan, LEVEL, [3.5, 0.95])).toBe(0);
  });

  it.each([
    ["ft-in", 8 * INCH_M, '+8"'],
    ["ft-in", 2 * FOOT_M, "+2'-0\""],
    ["m", 0.6, "+600 mm"],
  ] as const)("letters a platform's height in a box, inside its outline (%s, %d)", (units, height, text) => {
    const [lettered] = letterPlatform(platform({ height }), units, { items: [], scaleRatio: 48 });
    expect(lettered).toMatchObject({ text, boxed: true });
    expect(insideOutline(SQUARE, lettered?.at as PlanPoint)).toBe(true);
  });

  it("letters it inside an outline whose middle lies outside", () => {
    const outline: PlanPoint[] = [
      [0, 0],
      [4, 0],
      [4, 0.6],
      [0.6, 0.6],
      [0.6, 4],
      [0, 4],
    ];
    const [lettered] = letterPlatform(platform({ outline }), "m", { items: [], scaleRatio: 48 });
    expect(insideOutline(outline, lettered?.at as PlanPoint)).toBe(true);
  });
});

describe("a flight of stairs in plan", () => {
  it("shows a line for each nosing one tread apart, and runs on one tread past the top with nothing to land on", () => {
    const list = drawStair(planOf({}), stair({}), LEVEL, 48);
    const run = strokeOf(list, "plan.stair.S.run");
    expect(Math.max(...run.points.map(([, y]) => y))).toBeCloseTo(0.9, 9);
    expect([2, 3].map((n) => firstOf(strokeOf(list, `plan.stair.S.nosing.${n}`))[1])).toEqual([0.3, 0.6]);
  });

  it("ends at its top nosing where a platform of that level goes on", () => {
    const landing = platform({
      outline: [
        [0, 0.6],
        [2, 0.6],
        [2, 2],
        [0, 2],
      ],
      height: 0.45,
    });
    const list = drawStair(planOf({ platforms: [landing] }), stair({}), LEVEL, 48);
    expect(Math.max(...strokeOf(list, "plan.stair.S.run").points.map(([, y]) => y))).toBeCloseTo(0.6, 9);
  });

  it.each([
    {
      name: "upstage",
      nosing: [
        [0, 0],
        [1, 0],
      ],
      up: [0, 1],
    },
    {
      name: "downstage",
      nosing: [
        [1, 3],
        [0, 3],
      ],
      up: [0, -1],
    },
    {
      name: "to stage right",
      nosing: [
        [0, 0],
        [0, 1],
      ],
      up: [-1, 0],
    },
  ] as const)("points the arrow up the flight, to the left of its lowest nosing ($name)", ({ nosing, up }) => {
    const flight = stair({ nosing: [nosing[0], nosing[1]] });
    const arrow = strokeOf(drawStair(planOf({}), flight, LEVEL, 48), "plan.stair.S.up");
    const [a, b] = [firstOf(arrow), lastOf(arrow)];
    expect((b[0] - a[0]) / gap(a, b)).toBeCloseTo(up[0], 9);
    expect((b[1] - a[1]) / gap(a, b)).toBeCloseTo(up[1], 9);
    const [name] = letterStair(flight, LEVEL, { items: [], scaleRatio: 48 });
    expect(name?.text).toBe("UP 3 R");
  });

  it("draws nothing for a nosing of no length", () => {
    expect(
      drawStair(
        planOf({}),
        stair({
          nosing: [
            [1, 1],
            [1, 1],
          ],
        }),
        LEVEL,
        48,
      ),
    ).toEqual([]);
  });
});
