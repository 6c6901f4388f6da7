import fc from "fast-check";
import type { Board } from "@/lib/construction/board";
import type { Plan, Wall } from "@/lib/plan/plan";
import type { PlanPoint } from "@/lib/stage/frame";
import type { Stage } from "@/lib/stage/stage";
import type { Viewer } from "@/lib/stage/viewer";
import { real } from "../perspective/arbitraries";

type House = { readonly stage: Stage; readonly viewer: Viewer; readonly scaleRatio: number };

const anyHouse: fc.Arbitrary<House> = fc
  .record({
    width: real(7, 14),
    height: real(4.5, 8),
    depth: real(5, 14),
    apron: fc.oneof(fc.constant(0), real(0.3, 2)),
    rake: fc.oneof(fc.constant(0), real(0.01, 1 / 12)),
    distance: real(5, 25),
    eyeHeight: real(1.2, 4),
    offset: fc.oneof(fc.constant(0), real(-3, 3)),
    scaleRatio: fc.constantFrom(24, 48, 96, 25, 50),
  })
  .map(({ width, height, depth, apron, rake, distance, eyeHeight, offset, scaleRatio }) => ({
    stage: { opening: { width, height }, depth, apron, rake },
    viewer: { distance, eyeHeight, offset },
    scaleRatio,
  }));

/** An offset of the plan: anywhere, and the places that take a construction's legs away. */
function anyAcross({ stage, viewer }: House): fc.Arbitrary<number> {
  const half = stage.opening.width / 2;
  return fc.oneof(
    { weight: 6, arbitrary: real(-1.4 * half, 1.4 * half) },
    { weight: 2, arbitrary: fc.integer({ min: -20, max: 20 }).map((n) => (n * half) / 20) },
    { weight: 2, arbitrary: fc.constantFrom(0, viewer.offset, half, -half) },
  );
}

/** A depth of the plan: before the plaster line, on it, upstage of it by any share, at the back wall. */
function anyDepth({ stage }: House): fc.Arbitrary<number> {
  return fc.oneof(
    { weight: 6, arbitrary: real(0.05 * stage.depth, stage.depth) },
    { weight: 2, arbitrary: fc.integer({ min: 1, max: 16 }).map((n) => (n * stage.depth) / 16) },
    { weight: 2, arbitrary: fc.constantFrom(0, stage.depth, stage.depth / 2, -stage.apron) },
    { weight: 1, arbitrary: real(-stage.apron, 0) },
  );
}

function anyPlace(house: House): fc.Arbitrary<PlanPoint> {
  return fc.tuple(anyAcross(house), anyDepth(house));
}

/** A height: any, and eye height, where every line lies on the horizon. */
function anyHeight({ viewer, stage }: House, most: number): fc.Arbitrary<number> {
  const top = Math.min(most, stage.opening.height);
  return fc.oneof(
    { weight: 5, arbitrary: real(0.2, top) },
    { weight: 1, arbitrary: fc.constantFrom(viewer.eyeHeight, stage.opening.height) },
  );
}

const anyBase = fc.oneof({ weight: 3, arbitrary: fc.constant(0) }, { weight: 1, arbitrary: real(0.1, 1) });

/** Openings as shares of the wall's length: all over, at its middle, and one that begins in the corner itself. */
const openingShares = fc.constantFrom<readonly (readonly [number, number])[]>(
  [],
  [[0.2, 0.3]],
  [[0.25, 0.5]],
  [[0, 0.5]],
  [
    [0.1, 0.2],
    [0.5, 0.35],
  ],
);

function anyWall(house: House, id: string, from: string, to: string): fc.Arbitrary<(length: number) => Wall> {
  return fc
    .record({ height: anyHeight(house, 5), base: anyBase, shares: openingShares, sill: fc.constantFrom(0, 0.7) })
    .map(({ height, base, shares, sill }) => (length) => ({
      id,
      from,
      to,
      height,
      thickness: 0,
      base,
      onstage: "right",
      openings: shares.map(([at, width], i) => ({
        id: `o${i}`,
        kind: sill === 0 ? "door" : "window",
        at: at * length,
        width: width * length,
        sill: Math.min(sill, height / 3),
        head: height * 0.8,
        depth: null,
        leaves: 1,
        hinge: null,
        swing: "offstage",
      })),
    }));
}

function anyPlan(house: House): fc.Arbitrary<Plan> {
  const ids = Array.from({ length: 5 }, (_, i) => `W${i + 1}`);
  return fc
    .record({
      corners: fc.array(anyPlace(house), { minLength: 6, maxLength: 6 }),
      sameDepth: fc.boolean(),
      walls: fc.tuple(...ids.map((id, i) => anyWall(house, id, `C${i + 1}`, `C${i + 2}`))),
      alone: anyPlace(house),
      platform: fc.record({
        outline: fc.array(anyPlace(house), { minLength: 3, maxLength: 3 }),
        height: real(0.15, 1),
        base: anyBase,
      }),
      stair: fc.record({
        nosing: fc.tuple(anyPlace(house), anyPlace(house)),
        steps: fc.integer({ min: 1, max: 4 }),
        tread: real(0.2, 0.35),
        riser: real(0.12, 0.2),
        base: anyBase,
      }),
      item: fc.record({ at: anyPlace(house), turn: real(-3, 3), height: anyHeight(house, 2), base: anyBase }),
      column: fc.record({ at: anyPlace(house), height: anyHeight(house, 5), base: anyBase }),
      cloth: fc.record({ ends: fc.tuple(anyAcross(house), anyAcross(house)), y: anyDepth(house), drop: real(0.5, 2) }),
    })
    .map(({ corners, sameDepth, walls, alone, platform, stair, item, column, cloth }) => {
      // A wall parallel to the plaster line has to be asked for: two random depths are never equal.
      const places = corners.map(
        ([x, y], i): PlanPoint => (sameDepth && i === 3 ? [x, (corners[2] as PlanPoint)[1]] : [x, y]),
      );
      const named = new Map(places.map((place, i) => [`C${i + 1}`, place]));
      const length = (i: number) => {
        const [a, b] = [places[i] as PlanPoint, places[i + 1] as PlanPoint];
        return Math.hypot(b[0] - a[0], b[1] - a[1]);
      };
      return {
        corners: new Map([...named, ["Q", alone] as const]),
        walls: walls.map((make, i) => make(length(i))),
        platforms: [{ id: "P1", ...platform }],
        stairs: [{ id: "S1", ...stair }],
        furniture: [{ id: "table", kind: "table", width: 1.4, depth: 0.7, ...item }],
        columns: [{ id: "K1", diameter: 0.3, ...column }],
        masking: [
          {
            id: "border",
            kind: "border",
            line: [
              [cloth.ends[0], cloth.y],
              [cloth.ends[1], cloth.y],
            ],
            trim: 4,
            height: cloth.drop,
          },
        ],
      };
    });
}

/** A board of any house with five walls one after another at all angles, and one of everything else. Nothing is placed. */
export const anyBoard: fc.Arbitrary<Board> = anyHouse.chain((house) =>
  anyPlan(house).map((plan) => ({ ...house, plan, units: "m" as const, placed: new Map() })),
);
