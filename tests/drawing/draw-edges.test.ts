import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { DrawingPoint } from "@/lib/drawing/display-list";
import { drawEdges, OWN_LINES, TRUE_LINES } from "@/lib/drawing/draw-edges";
import { mapQuad, type Quad } from "@/lib/drawing/map-quad";
import { meet } from "@/lib/geometry/meet";
import { project } from "@/lib/perspective/project";
import { listEdges } from "@/lib/plan/list-edges";
import { namePoints } from "@/lib/plan/name-points";
import type { Opening } from "@/lib/plan/plan";
import type { PicturePoint, StagePoint } from "@/lib/stage/frame";
import { firstOf, gap, lastOf, numbersOf, strokeOf } from "./fixtures/find-stroke";
import { loadFixture } from "./fixtures/load-fixture";
import { opening, planOf, wallAB } from "./fixtures/plan-of";

const VIEWER = { distance: 9, eyeHeight: 2, offset: 0.5 };

/** One raking wall with one opening, on a stage of some rake: its points, edges and true places. */
function setOf(one: Partial<Opening>, rake = 0) {
  const plan = planOf({ corners: { A: [-3, 2], B: [2, 5] }, walls: [wallAB({ openings: [opening(one)] })] });
  const points = namePoints(plan, { rake });
  const places = new Map<string, PicturePoint>();
  for (const [name, { at }] of points) {
    const seen = project(VIEWER, at);
    if (seen.seen) places.set(name, seen.at);
  }
  return { set: { plan, points }, edges: listEdges(plan, points), places };
}

const corner = (places: ReadonlyMap<string, PicturePoint>, name: string) => places.get(`W.o.${name}`) as DrawingPoint;

describe("edges in the picture", () => {
  it("are drawn once both their ends are on the sheet", () => {
    const { edges, places } = setOf({});
    const some = new Map([...places].filter(([name]) => name === "A.foot" || name === "B.foot" || name === "B.top"));
    expect(drawEdges(edges, some, OWN_LINES).map(({ id }) => id)).toEqual(["own.A.foot~B.foot", "own.B.foot~B.top"]);
    expect(drawEdges(edges, new Map(), OWN_LINES)).toEqual([]);
  });

  it("differ by more than their colour: corrections are dashed, red and exact", () => {
    const { edges, places } = setOf({});
    expect(drawEdges(edges, places, TRUE_LINES)[0]).toMatchObject({ pencil: "red", line: "hidden", hand: false });
    expect(drawEdges(edges, places, OWN_LINES)[0]).toMatchObject({ pencil: "graphite", line: "solid", hand: true });
  });

  it.each(["tide-mill", "rope-walk"] as const)(
    "gives every stroke of %s finite numbers and an id of its own",
    (name) => {
      const { plan, stage, viewer } = loadFixture(name);
      const points = namePoints(plan, stage);
      const places = new Map<string, PicturePoint>();
      for (const [point, { at }] of points) {
        const seen = project(viewer, at);
        if (seen.seen) places.set(point, seen.at);
      }
      const drawn = drawEdges(listEdges(plan, points), places, OWN_LINES, { plan, points });
      expect(numbersOf(drawn).every(Number.isFinite)).toBe(true);
      expect(new Set(drawn.map(({ id }) => id)).size).toBe(drawn.length);
    },
  );
});

describe("an arch in the picture", () => {
  // The real curve of the wall, projected point by point: half a circle (or, of a low arch, half an ellipse) on the jambs.
  it.each([
    { name: "high, on a level floor", arch: { width: 1.6, head: 3 }, rake: 0, spring: 2.2 },
    { name: "high, on a rake", arch: { width: 1.6, head: 3 }, rake: 0.06, spring: 2.2 },
    { name: "low, from its sill", arch: { width: 2, sill: 0.5, head: 1.1 }, rake: 0, spring: 0.5 },
  ])("is the true curve for true corners ($name)", ({ arch, rake, spring }) => {
    const { set, edges, places } = setOf({ kind: "arch", ...arch }, rake);
    const [half, ground] = [arch.width / 2, (set.points.get("W.o.start.head")?.at[2] ?? 0) - arch.head];
    const [start, end] = ["start.head", "end.head"].map((at) => set.points.get(`W.o.${at}`)?.at as StagePoint) as [
      StagePoint,
      StagePoint,
    ];
    const curve = strokeOf(drawEdges(edges, places, OWN_LINES, set), "own.W.o.arch");
    const last = curve.points.length - 1;
    curve.points.forEach((point, i) => {
      const angle = Math.PI * (1 - i / last);
      const along = (half + half * Math.cos(angle)) / arch.width;
      const seen = project(VIEWER, [
        start[0] + (end[0] - start[0]) * along,
        start[1] + (end[1] - start[1]) * along,
        ground + spring + (arch.head - spring) * Math.sin(angle),
      ]);
      if (!seen.seen) throw new Error("The arch stands before the eye.");
      expect(gap(point, seen.at)).toBeLessThan(1e-9);
    });
  });

  it("takes the place of the straight head, and starts where its jambs end", () => {
    const { set, edges, places } = setOf({ kind: "arch", width: 1.6, head: 3 });
    const drawn = drawEdges(edges, places, OWN_LINES, set);
    expect(drawn.some(({ id }) => id === "own.W.o.start.head~W.o.end.head")).toBe(false);
    expect(gap(firstOf(strokeOf(drawn, "own.W.o.arch")), lastOf(strokeOf(drawn, "own.W.o.jamb.start")))).toBeLessThan(
      1e-12,
    );
    expect(gap(lastOf(strokeOf(drawn, "own.W.o.arch")), lastOf(strokeOf(drawn, "own.W.o.jamb.end")))).toBeLessThan(
      1e-12,
    );
  });

  it("touches a student's head line and stands on the student's sills, wherever those were marked", () => {
    const { set, edges, places } = setOf({ kind: "arch", width: 1.6, head: 3 });
    const shifted = new Map(
      [...places].map(([name, [X, Z]], i): [string, PicturePoint] => [
        name,
        [X + 0.05 * Math.sin(i), Z + 0.05 * Math.cos(i)],
      ]),
    );
    const drawn = drawEdges(edges, shifted, OWN_LINES, set);
    expect(gap(firstOf(strokeOf(drawn, "own.W.o.jamb.start")), corner(shifted, "start.sill"))).toBeLessThan(1e-9);
    expect(gap(firstOf(strokeOf(drawn, "own.W.o.jamb.end")), corner(shifted, "end.sill"))).toBeLessThan(1e-9);
    const [a, b] = [corner(shifted, "start.head"), corner(shifted, "end.head")];
    const above = strokeOf(drawn, "own.W.o.arch").points.map(
      ([x, z]) => (b[0] - a[0]) * (z - a[1]) - (b[1] - a[1]) * (x - a[0]),
    );
    expect(Math.max(...above)).toBeCloseTo(0, 9);
  });

  it("stays straight while a corner is missing, or when the four could be no view of it", () => {
    const { set, edges, places } = setOf({ kind: "arch", width: 1.6, head: 3 });
    const missing = new Map(places);
    missing.delete("W.o.end.sill");
    expect(drawEdges(edges, missing, OWN_LINES, set).some(({ id }) => id === "own.W.o.start.head~W.o.end.head")).toBe(
      true,
    );
    const crossed = new Map(places);
    crossed.set("W.o.start.head", corner(places, "end.head"));
    crossed.set("W.o.end.head", corner(places, "start.head"));
    const drawn = drawEdges(edges, crossed, OWN_LINES, set);
    expect(drawn.some(({ id }) => id === "own.W.o.start.head~W.o.end.head")).toBe(true);
    expect(drawn.some(({ id }) => id === "own.W.o.arch")).toBe(false);
  });
});

describe("a window in the picture", () => {
  it("has its glazing bars cross where its diagonals do, for true corners and for a student's", () => {
    const { set, edges, places } = setOf({ kind: "window", width: 1.4, sill: 0.9, head: 2.2 });
    fc.assert(
      fc.property(fc.array(fc.double({ min: -0.1, max: 0.1, noNaN: true }), { minLength: 8, maxLength: 8 }), (off) => {
        const names = ["start.sill", "end.sill", "end.head", "start.head"];
        const own = new Map(places);
        names.forEach((name, i) => {
          const [X, Z] = corner(places, name);
          own.set(`W.o.${name}`, [X + (off[2 * i] ?? 0), Z + (off[2 * i + 1] ?? 0)]);
        });
        const drawn = drawEdges(edges, own, OWN_LINES, set);
        const [p, q, r, s] = names.map((name) => corner(own, name)) as unknown as Quad;
        const middle = meet([p, r], [q, s]) as DrawingPoint;
        const [up, level] = ["bar.upright", "bar.level"].map((bar) => strokeOf(drawn, `own.W.o.${bar}`).points);
        const crossing = meet(
          [up?.[0] as DrawingPoint, up?.[1] as DrawingPoint],
          [level?.[0] as DrawingPoint, level?.[1] as DrawingPoint],
        ) as DrawingPoint;
        expect(gap(middle, crossing)).toBeLessThan(1e-9);
      }),
      { seed: 19, numRuns: 200 },
    );
  });
});

describe("mapping one quadrilateral on another", () => {
  const unit: Quad = [
    [0, 0],
    [1, 0],
    [1, 1],
    [0, 1],
  ];
  const keystone: Quad = [
    [2, 1],
    [6, 2],
    [5, 5],
    [2, 4],
  ];

  it("takes corners to corners and back", () => {
    const [there, back] = [mapQuad(unit, keystone), mapQuad(keystone, unit)];
    if (!there || !back) throw new Error("Both are convex.");
    for (const [i, point] of unit.entries()) expect(gap(there(point), keystone[i] as DrawingPoint)).toBeLessThan(1e-12);
    expect(gap(back(there([0.3, 0.7])), [0.3, 0.7])).toBeLessThan(1e-12);
  });

  it.each<{ name: string; quad: Quad }>([
    {
      name: "flat",
      quad: [
        [0, 0],
        [1, 0],
        [2, 0],
        [3, 0],
      ],
    },
    {
      name: "one point",
      quad: [
        [1, 1],
        [1, 1],
        [1, 1],
        [1, 1],
      ],
    },
    {
      name: "crossed",
      quad: [
        [0, 0],
        [1, 0],
        [0, 1],
        [1, 1],
      ],
    },
    {
      name: "dented",
      quad: [
        [0, 0],
        [4, 0],
        [1, 1],
        [0, 4],
      ],
    },
  ])("maps none that is $name", ({ quad }) => {
    expect(mapQuad(unit, quad)).toBeNull();
  });
});
