import { describe, expect, it } from "vitest";
import type { DisplayList, Stroke } from "@/lib/drawing/display-list";
import { drawFinishedPicture } from "@/lib/drawing/draw-finished-picture";
import type { Exercise } from "@/lib/exercise/exercise";
import { invert3, multiply3, type Vector3 } from "@/lib/geometry/matrix3";
import { project } from "@/lib/perspective/project";
import { namePoints } from "@/lib/plan/name-points";
import type { Plan } from "@/lib/plan/plan";
import { loadFixture } from "./fixtures/load-fixture";
import { opening, planOf, wallAB } from "./fixtures/plan-of";

const STAGE = { opening: { width: 10, height: 6 }, depth: 9, apron: 1, rake: 0 };
const VIEWER = { distance: 11, eyeHeight: 2.6, offset: 0.7 };
const SCALE = 24;

function draw(plan: Plan, options: Parameters<typeof drawFinishedPicture>[1] = {}, changes: Partial<Exercise> = {}) {
  return drawFinishedPicture({ plan, stage: STAGE, viewer: VIEWER, scaleRatio: SCALE, ...changes }, options);
}

function strokes(list: DisplayList, start = ""): readonly Stroke[] {
  return list.filter((item): item is Stroke => item.kind === "stroke" && item.id.startsWith(start));
}

/** Whether some stroke passes a picture point, metres. */
function passes(list: readonly Stroke[], [X, Z]: readonly [number, number], within = 1e-6): boolean {
  return list.some(({ points, closed }) => {
    const ring = closed ? [...points, points[0] as (typeof points)[number]] : points;
    return ring.slice(1).some(([bx, bz], i) => {
      const [ax, az] = ring[i] as (typeof ring)[number];
      const square = (bx - ax) ** 2 + (bz - az) ** 2;
      const t = Math.min(1, Math.max(0, ((X - ax) * (bx - ax) + (Z - az) * (bz - az)) / square));
      return Math.hypot(ax + (bx - ax) * t - X, az + (bz - az) * t - Z) < within;
    });
  });
}

describe("the finished picture of a wall", () => {
  const wall = wallAB({
    thickness: 0.15,
    openings: [opening({ kind: "window", at: 2, width: 1.5, sill: 0.9, head: 2.2 })],
  });
  const plan = planOf({ corners: { A: [-3, 4], B: [2, 6] }, walls: [wall] });

  it("has the lines of its window at the projected named points", () => {
    const list = strokes(draw(plan), "finished.W.");
    const points = namePoints(plan, STAGE);
    for (const corner of ["start.sill", "start.head", "end.sill", "end.head"]) {
      const seen = project(VIEWER, points.get(`W.o.${corner}`)?.at ?? [0, 0, 0]);
      expect(seen.seen && passes(list, seen.at), corner).toBe(true);
    }
  });

  it("draws its top thick, against the stage far behind, and its foot thin", () => {
    const list = strokes(draw(plan));
    const at = (z: number) => {
      const seen = project(VIEWER, [-0.5, 5, z]);
      return seen.seen ? seen.at : ([0, 0] as const);
    };
    expect(
      passes(
        list.filter(({ weight }) => weight === "thick"),
        at(4),
      ),
    ).toBe(true);
    const foot = list.filter(({ points }) => points.length > 0 && passes([{ points, closed: false } as Stroke], at(0)));
    expect(foot.map(({ weight }) => weight)).toEqual(["thin"]);
  });

  it("is hidden where a nearer wall stands before it", () => {
    const nearer = wallAB({ id: "N", from: "C", to: "D" });
    const both = planOf({ corners: { A: [-3, 4], B: [2, 6], C: [-4, 1], D: [4, 1] }, walls: [wall, nearer] });
    expect(strokes(draw(both), "finished.W")).toEqual([]);
    expect(strokes(draw(both), "finished.N").length).toBeGreaterThan(0);
  });

  it("shows through an opening what stands behind it", () => {
    const far = { id: "K", at: [-0.4, 7] as const, diameter: 0.2, height: 3, base: 0 };
    const gate = wallAB({ openings: [opening({ kind: "passage", at: 1, width: 3, head: 3 })] });
    const corners = { A: [-3, 3], B: [3, 3] } as const;
    expect(strokes(draw(planOf({ corners, walls: [gate], columns: [far] })), "finished.K").length).toBeGreaterThan(0);
    const closed = planOf({ corners, walls: [wallAB({})], columns: [far] });
    expect(strokes(draw(closed), "finished.K")).toEqual([]);
  });
});

describe("the proscenium", () => {
  it("masks what stands upstage outside its opening", () => {
    const plan = planOf({ corners: { A: [-30, 3], B: [30, 3] }, walls: [wallAB({ height: 30 })] });
    const list = strokes(draw(plan, {}, { viewer: { ...VIEWER, offset: 0 } }), "finished.W");
    for (const { points } of list)
      for (const [X, Z] of points) {
        expect(Math.abs(X)).toBeLessThan(5 + 1e-9);
        expect(Z).toBeLessThan(6 + 1e-9);
      }
    expect(list.length).toBeGreaterThan(0);
  });

  it("stands behind what stands on the apron", () => {
    const box = { id: "b", kind: "box", at: [4.9, -0.5], turn: 0, width: 1, depth: 0.5, height: 1, base: 0 } as const;
    const list = draw(planOf({ furniture: [box] }));
    const past = strokes(list, "finished.b").flatMap(({ points }) => points.filter(([X]) => X > 5.1));
    expect(past.length).toBeGreaterThan(0);
    const ids = list.map(({ id }) => id);
    const blank = ids.findIndex((id) => id.startsWith("finished.blank.b"));
    expect(blank).toBeGreaterThan(ids.lastIndexOf("finished.picture.proscenium.opening"));
    expect(blank).toBeLessThan(ids.findIndex((id) => id.startsWith("finished.b.")));
  });

  it("is drawn extra thick and true, whatever the hand", () => {
    for (const hand of [true, false]) {
      const frame = strokes(draw(planOf({}), { hand }), "finished.picture.proscenium.opening")[0];
      expect(frame).toMatchObject({ weight: "extra-thick", hand: false });
    }
  });
});

describe("a column's top", () => {
  it("lies on the exact conic that its circle projects to, within 0.01 mm of paper", () => {
    for (const [x, y, diameter] of [
      [-3, 2, 0.4],
      [2, 5, 0.6],
      [0.5, 0.5, 0.25],
    ] as const) {
      const column = { id: "K", at: [x, y], diameter, height: 0.9, base: 0 } as const;
      const list = strokes(draw(planOf({ columns: [column] }), { hand: false }), "finished.K.top");
      expect(list.length).toBeGreaterThan(0);
      const conic = conicOf(x, y, diameter / 2, 0.9);
      for (const { points, closed } of list) {
        const ring = closed ? [...points, points[0] as (typeof points)[number]] : points;
        for (const [i, [bx, bz]] of ring.entries()) {
          if (i === 0) continue;
          const [ax, az] = ring[i - 1] as (typeof ring)[number];
          for (const t of [0, 0.25, 0.5, 0.75, 1]) {
            const off = distanceToConic(conic, ax + (bx - ax) * t, az + (bz - az) * t);
            expect((off * 1000) / SCALE).toBeLessThan(0.01);
          }
        }
      }
      // The whole rim is seen from above.
      const rim = Array.from({ length: 2001 }, (_, i): readonly [number, number] => {
        const angle = (2 * Math.PI * i) / 2000;
        const seen = project(VIEWER, [x + (diameter / 2) * Math.cos(angle), y + (diameter / 2) * Math.sin(angle), 0.9]);
        return seen.seen ? seen.at : [Number.NaN, Number.NaN];
      });
      const drawn = list.map(({ points, closed }) =>
        closed ? [...points, points[0] as readonly [number, number]] : points,
      );
      expect(drawn.reduce((sum, line) => sum + lengthOf(line), 0) / lengthOf(rim)).toBeCloseTo(1, 2);
    }
  });

  /**
   * A conic C goes to H^-T C H^-1 under the map H of its plane (Hartley & Zisserman, Multiple View Geometry, 2nd ed., result 2.13,
   * from memory). H takes (x, y, 1) on the level z to the picture: X = (x D + ex y) / (D + y), Z = (h y + z D) / (D + y).
   */
  function conicOf(x: number, y: number, r: number, z: number): readonly [Vector3, Vector3, Vector3] {
    const { distance: D, eyeHeight: h, offset: ex } = VIEWER;
    const inverse = invert3([
      [D, ex, 0],
      [0, h, z * D],
      [0, 1, D],
    ]);
    if (!inverse) throw new Error("The level of the eye has no map");
    const circle: readonly [Vector3, Vector3, Vector3] = [
      [1, 0, -x],
      [0, 1, -y],
      [-x, -y, x * x + y * y - r * r],
    ];
    const entry = (i: 0 | 1 | 2, j: 0 | 1 | 2) => {
      const column = (k: 0 | 1 | 2): Vector3 => [inverse[0][k], inverse[1][k], inverse[2][k]];
      const image = multiply3(circle, column(j));
      const left = column(i);
      return left[0] * image[0] + left[1] * image[1] + left[2] * image[2];
    };
    const row = (i: 0 | 1 | 2): Vector3 => [entry(i, 0), entry(i, 1), entry(i, 2)];
    return [row(0), row(1), row(2)];
  }

  function lengthOf(line: readonly (readonly [number, number])[]): number {
    return line.slice(1).reduce((sum, [X, Z], i) => {
      const [U, W] = line[i] as readonly [number, number];
      return sum + Math.hypot(X - U, Z - W);
    }, 0);
  }

  /** First order (Sampson's) distance of a point from a conic; exact in the limit of points near it. */
  function distanceToConic(conic: readonly [Vector3, Vector3, Vector3], X: number, Z: number): number {
    const [u, v, w] = multiply3(conic, [X, Z, 1]);
    return Math.abs(X * u + Z * v + w) / (2 * Math.hypot(u, v));
  }
});

describe("a figure for scale", () => {
  it("stands where it is put, hides and is hidden", () => {
    const corners = { A: [-4, 5], B: [4, 5] } as const;
    const plan = planOf({ corners, walls: [wallAB({})] });
    expect(strokes(draw(plan, { figureAt: [0, 3] }), "finished.figure").length).toBeGreaterThan(0);
    expect(strokes(draw(plan, { figureAt: [0, 7] }), "finished.figure")).toEqual([]);
    expect(strokes(draw(plan), "finished.figure")).toEqual([]);
    const foot = (figureAt: readonly [number, number] | null) =>
      strokes(draw(plan, { figureAt }), "finished.W.").filter(({ points }) => points.every(([, Z]) => Z < 1.2)).length;
    expect(foot([0, 4])).toBeGreaterThan(foot(null));
  });
});

describe("the hand", () => {
  const { plan, stage, viewer, scaleRatio } = loadFixture("tide-mill");

  it("changes nothing but the hand: the same lines with the same ids, each id once", () => {
    const byHand = drawFinishedPicture({ plan, stage, viewer, scaleRatio });
    const ruled = drawFinishedPicture({ plan, stage, viewer, scaleRatio }, { hand: false });
    expect(ruled.some((item) => item.kind === "stroke" && item.hand)).toBe(false);
    expect(byHand.map((item) => ({ ...item, hand: false }))).toEqual(ruled);
    expect(new Set(ruled.map(({ id }) => id)).size).toBe(ruled.length);
  });

  it("keeps the ids of a line when the picture is drawn again, and begins them as asked", () => {
    const once = drawFinishedPicture({ plan, stage, viewer, scaleRatio }, { idPrefix: "own" });
    expect(drawFinishedPicture({ plan, stage, viewer, scaleRatio }, { idPrefix: "own" })).toEqual(once);
    for (const { id } of once) expect(id.startsWith("own.")).toBe(true);
  });
});
