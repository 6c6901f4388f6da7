import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { namePoints } from "@/lib/plan/name-points";
import { FURNITURE_KINDS, type Furniture, type FurnitureKind, type Plan } from "@/lib/plan/plan";
import { furnitureSolid } from "@/lib/plan/solids/furniture/furniture-solid";
import type { Solid } from "@/lib/plan/solids/solid";
import type { StagePoint } from "@/lib/stage/frame";
import { seeded } from "../../../seeded";
import { bodyOf, expectClosed, volume } from "../expect-closed";

const EMPTY: Plan = {
  corners: new Map(),
  walls: [],
  platforms: [],
  stairs: [],
  furniture: [],
  columns: [],
  masking: [],
};

/** Usual sizes, width x depth x height in metres: common practice, no source. */
const USUAL: Readonly<Record<FurnitureKind, readonly [number, number, number]>> = {
  box: [0.5, 0.5, 0.5],
  table: [1.5, 0.8, 0.75],
  chair: [0.45, 0.45, 0.9],
  stool: [0.35, 0.35, 0.5],
  sofa: [2, 0.9, 0.85],
  bed: [1.4, 2, 1],
  desk: [1.5, 0.75, 0.76],
  chest: [1, 0.5, 0.9],
  bench: [1.5, 0.4, 0.45],
  bookcase: [1, 0.35, 2],
  stove: [0.9, 0.6, 0.9],
  piano: [1.5, 0.65, 1.25],
  counter: [2, 0.7, 1.05],
};

function piece(kind: FurnitureKind, more: Partial<Furniture> = {}): Furniture {
  const [width, depth, height] = USUAL[kind];
  return { id: "it", kind, at: [0.5, 3], turn: 0, width, depth, height, base: 0, ...more };
}

/** A piece's named corners, 1 to 4. */
function corners(item: Furniture, rake: number, end: "foot" | "top"): StagePoint[] {
  const points = namePoints({ ...EMPTY, furniture: [item] }, { rake });
  return [1, 2, 3, 4].map((i) => {
    const at = points.get(`${item.id}.${i}.${end}`)?.at;
    if (!at) throw new Error(`${item.id}.${i}.${end} is not named`);
    return at;
  });
}

/**
 * How far the solid reaches along the box's own directions, both from the named corners: along the side 1 -> 2, along
 * 1 -> 4, down from the tops, and up from the raked floor.
 */
function expectFillsBox(solid: Solid, item: Furniture, rake: number) {
  const feet = corners(item, rake, "foot");
  const tops = corners(item, rake, "top");
  const all = solid.faces.flatMap(({ outline }) => outline);
  for (const other of [1, 3]) {
    const [from, to] = [tops[0], tops[other]] as [StagePoint, StagePoint];
    const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
    const along = all.map(([x, y]) => ((x - from[0]) * (to[0] - from[0]) + (y - from[1]) * (to[1] - from[1])) / length);
    expect(Math.abs(Math.min(...along))).toBeLessThan(1e-9);
    expect(Math.abs(Math.max(...along) - length)).toBeLessThan(1e-9);
  }
  const top = tops[0]?.[2] ?? Number.NaN;
  expect(Math.abs(Math.max(...all.map(([, , z]) => z)) - top)).toBeLessThan(1e-9);
  const floor = (y: number) => rake * Math.max(y, 0) + item.base;
  for (const foot of feet) expect(Math.abs(foot[2] - floor(foot[1]))).toBeLessThan(1e-9);
  expect(Math.abs(Math.min(...all.map(([, y, z]) => z - floor(y))))).toBeLessThan(1e-9);
}

/** A share of a line's length or a distance too small to be meant, metres. */
const NOTHING_M = 1e-9;

function expectSound(solid: Solid) {
  expectClosed(solid);
  expect(new Set(solid.faces.map(({ id }) => id)).size).toBe(solid.faces.length);
  expect(new Set(solid.lines.map(({ id }) => id)).size).toBe(solid.lines.length);
  for (const line of solid.lines) {
    expect(Math.hypot(...line.from.map((n, k) => n - (line.to[k] as number))), line.id).toBeGreaterThan(NOTHING_M);
    expect(line.faces).toHaveLength(line.kind === "detail" ? 1 : 2);
    for (const place of line.faces) {
      const outline = solid.faces[place]?.outline ?? [];
      for (const end of [line.from, line.to])
        expect(outOfPlane(outline, end), `${line.id} lies in its face's plane`).toBeLessThan(1e-9);
    }
  }
}

function outOfPlane(outline: readonly StagePoint[], point: StagePoint): number {
  const [a, b, c] = [outline[0], outline[1], outline[2]] as [StagePoint, StagePoint, StagePoint];
  const from = (p: StagePoint) => [p[0] - a[0], p[1] - a[1], p[2] - a[2]] as const;
  const [p, q, r] = [from(b), from(c), from(point)];
  const n = [p[1] * q[2] - p[2] * q[1], p[2] * q[0] - p[0] * q[2], p[0] * q[1] - p[1] * q[0]] as const;
  return Math.abs(n[0] * r[0] + n[1] * r[1] + n[2] * r[2]) / Math.hypot(...n);
}

describe.each(FURNITURE_KINDS)("a %s", (kind) => {
  it("of its usual size is made of closed bodies that fill its bounding box", () => {
    for (const turnDeg of [0, 25, -60, 180]) {
      const item = piece(kind, { turn: (turnDeg * Math.PI) / 180 });
      const solid = furnitureSolid(item, { rake: 0 });
      expectSound(solid);
      expectFillsBox(solid, item, 0);
    }
  });

  const sizes = fc.record({
    at: fc.tuple(fc.double({ min: -5, max: 5, noNaN: true }), fc.double({ min: -3, max: 8, noNaN: true })),
    turn: fc.double({ min: -Math.PI, max: Math.PI, noNaN: true }),
    width: fc.double({ min: 0.1, max: 5, noNaN: true }),
    depth: fc.double({ min: 0.1, max: 5, noNaN: true }),
    height: fc.double({ min: 0.1, max: 5, noNaN: true }),
    base: fc.constantFrom(0, 0, 0.6),
  });

  it("of any size and turn is as sound, on a level floor and on a rake", () => {
    fc.assert(
      fc.property(sizes, fc.constantFrom(0, 1 / 24, 1 / 12), (size, rake) => {
        const item = piece(kind, size);
        const solid = furnitureSolid(item, { rake });
        expectSound(solid);
        const clear =
          Math.min(...corners(item, rake, "top").map(([, , z]) => z)) -
          Math.max(...corners(item, rake, "foot").map(([, , z]) => z));
        if (clear > 0) expectFillsBox(solid, item, rake);
      }),
      { ...seeded, numRuns: Math.ceil(seeded.numRuns / 5) },
    );
  });

  it("takes a cube of 10 cm and one of 5 m", () => {
    for (const side of [0.1, 5]) {
      const item = piece(kind, { width: side, depth: side, height: side });
      const solid = furnitureSolid(item, { rake: 0 });
      expectSound(solid);
      expectFillsBox(solid, item, 0);
    }
  });

  it("stays in one piece for a student who turns it: a full turn changes nothing", () => {
    const once = furnitureSolid(piece(kind, { turn: 0.4 }), { rake: 0.05 });
    const again = furnitureSolid(piece(kind, { turn: 0.4 + 2 * Math.PI }), { rake: 0.05 });
    const flat = ({ faces }: Solid) => faces.flatMap(({ outline }) => outline.flat());
    expect(flat(again).length).toBe(flat(once).length);
    const all = flat(again);
    for (const [i, n] of flat(once).entries()) expect(all[i]).toBeCloseTo(n, 9);
  });

  it("keeps its parts apart: no two of its bodies fill the same room", () => {
    const solid = furnitureSolid(piece(kind), { rake: 0 });
    const bodies = new Map<string, Solid["faces"][number][]>();
    for (const face of solid.faces) bodies.set(bodyOf(face), [...(bodies.get(bodyOf(face)) ?? []), face]);
    const boxes = [...bodies.values()].map((faces) => {
      const at = faces.flatMap(({ outline }) => outline);
      return [0, 1, 2].map(
        (k) => [Math.min(...at.map((p) => p[k] as number)), Math.max(...at.map((p) => p[k] as number))] as const,
      );
    });
    boxes.forEach((one, i) => {
      for (const other of boxes.slice(i + 1)) {
        const shared = one.map(([low, high], k) => {
          const [low2, high2] = other[k] as readonly [number, number];
          return Math.min(high, high2) - Math.max(low, low2);
        });
        expect(Math.min(...shared)).toBeLessThan(1e-9);
      }
    });
    const [width, depth, height] = USUAL[kind];
    expect(volume(solid.faces)).toBeLessThanOrEqual(width * depth * height + 1e-9);
  });
});

describe("a piece of furniture", () => {
  it("turns its front toward the audience at turn 0, and counter-clockwise from above", () => {
    // the back of a chair is what reaches its top
    const back = (turnDeg: number) => {
      const { faces } = furnitureSolid(piece("chair", { at: [0, 0], turn: (turnDeg * Math.PI) / 180 }), { rake: 0 });
      const high = faces.flatMap(({ outline }) => outline).filter(([, , z]) => z > 0.6);
      const mean = (k: 0 | 1) => high.reduce((sum, p) => sum + p[k], 0) / high.length;
      return [mean(0), mean(1)] as const;
    };
    expect(back(0)[1]).toBeGreaterThan(0.15);
    expect(back(90)[0]).toBeLessThan(-0.15);
    expect(back(180)[1]).toBeLessThan(-0.15);
  });

  it("lets each foot go down to the raked floor under a level top", () => {
    const item = piece("table", { at: [0, 4], turn: 0 });
    const { faces } = furnitureSolid(item, { rake: 1 / 12 });
    const points = faces.flatMap(({ outline }) => outline);
    for (const [x, y, z] of corners(item, 1 / 12, "foot"))
      expect(points.some((p) => Math.hypot(p[0] - x, p[1] - y, p[2] - z) < 1e-9)).toBe(true);
    expect(Math.max(...points.map(([, , z]) => z))).toBeCloseTo(4 / 12 + 0.75, 12);
  });

  it("is a box where a raked floor all but swallows it, and nothing where it has no size", () => {
    const sunk = piece("table", { depth: 4, height: 0.2 });
    const { faces } = furnitureSolid(sunk, { rake: 1 / 12 });
    expect(new Set(faces.map(bodyOf))).toEqual(new Set(["it.box"]));
    expect(furnitureSolid(piece("table", { width: 0 }), { rake: 0 })).toEqual({ faces: [], lines: [] });
  });
});
