import { describe, expect, it } from "vitest";
import type { DrawingPoint } from "@/lib/drawing/display-list";
import { CUT_HEIGHT_M } from "@/lib/drawing/plan-symbols/draw-opening";
import { drawWall } from "@/lib/drawing/plan-symbols/draw-wall";
import type { Opening, Wall } from "@/lib/plan/plan";
import type { PlanPoint } from "@/lib/stage/frame";
import { firstOf, gap, lastOf, lengthOf, strokeOf } from "./fixtures/find-stroke";
import { opening, planOf, wallAB } from "./fixtures/plan-of";

function drawOne(parts: Partial<Wall>, ends: { A: PlanPoint; B: PlanPoint } = { A: [0, 2], B: [5, 2] }) {
  const wall = wallAB(parts);
  return drawWall(planOf({ corners: ends, walls: [wall] }), wall);
}

function expectPoint(actual: DrawingPoint | undefined, expected: readonly [number, number]) {
  expect(actual?.[0]).toBeCloseTo(expected[0], 9);
  expect(actual?.[1]).toBeCloseTo(expected[1], 9);
}

describe("a wall in plan", () => {
  it("is drawn extra thick on its onstage face from corner to corner", () => {
    const face = strokeOf(drawOne({}), "plan.wall.W.1.face");
    expect(face.weight).toBe("extra-thick");
    expect(face.points).toEqual([
      [0, 2],
      [5, 2],
    ]);
  });

  it("has its thickness offstage of that face: upstage for a wall listed from stage right to stage left", () => {
    const list = drawOne({ thickness: 0.15 });
    expect(strokeOf(list, "plan.wall.W.1.back").points).toEqual([
      [0, 2.15],
      [5, 2.15],
    ]);
    const turned = drawOne({ thickness: 0.15, onstage: "left" });
    expect(strokeOf(turned, "plan.wall.W.1.back").points).toEqual([
      [0, 1.85],
      [5, 1.85],
    ]);
  });

  it("is cut open where openings go through, in their order along the wall, overlapping ones as one gap", () => {
    const list = drawOne({
      openings: [
        opening({ id: "b", kind: "passage", at: 3, width: 1 }),
        opening({ id: "a", kind: "passage", at: 1, width: 0.5 }),
        opening({ id: "c", kind: "passage", at: 3.5, width: 1 }),
      ],
    });
    const faces = list.filter((item) => item.id.endsWith(".face"));
    expect(faces.map((f) => f.kind === "stroke" && f.points.map(([x]) => x))).toEqual([
      [0, 1],
      [1.5, 3],
      [4.5, 5],
    ]);
  });

  it("keeps to its own length when an opening runs past its end", () => {
    const list = drawOne({ openings: [opening({ kind: "passage", at: 4.5, width: 2 })] });
    expect(list.filter((item) => item.id.endsWith(".face"))).toHaveLength(1);
  });

  it("is not drawn between corners that are one point", () => {
    expect(drawOne({}, { A: [1, 1], B: [1, 1] })).toEqual([]);
  });

  it("meets the offstage face of the next wall at a mitre", () => {
    const corners: Record<string, PlanPoint> = { A: [0, 0], B: [0, 4], C: [4, 4] };
    const side = wallAB({ id: "W1", thickness: 0.2 });
    const back = wallAB({ id: "W2", from: "B", to: "C", thickness: 0.1 });
    const plan = planOf({ corners, walls: [side, back] });
    const corner = [-0.2, 4.1] as const;
    expectPoint(lastOf(strokeOf(drawWall(plan, side), "plan.wall.W1.1.back")), corner);
    expectPoint(firstOf(strokeOf(drawWall(plan, back), "plan.wall.W2.1.back")), corner);
  });
});

describe("a door in plan", () => {
  const table: readonly {
    readonly name: string;
    readonly door: Partial<Opening>;
    readonly pivot: readonly [number, number];
    readonly tip: readonly [number, number];
    readonly shut: readonly [number, number];
  }[] = [
    { name: "offstage from the start", door: { hinge: "start" }, pivot: [1, 2], tip: [1, 2.9], shut: [1.9, 2] },
    { name: "offstage from the end", door: { hinge: "end" }, pivot: [1.9, 2], tip: [1.9, 2.9], shut: [1, 2] },
    {
      name: "onstage from the start",
      door: { hinge: "start", swing: "onstage" },
      pivot: [1, 2],
      tip: [1, 1.1],
      shut: [1.9, 2],
    },
    {
      name: "onstage from the end",
      door: { hinge: "end", swing: "onstage" },
      pivot: [1.9, 2],
      tip: [1.9, 1.1],
      shut: [1, 2],
    },
  ];

  it.each(table)(
    "swings $name: the leaf is as long as the opening is wide, the arc ends on the far jamb",
    ({ door, pivot, tip, shut }) => {
      const list = drawOne({ openings: [opening({ width: 0.9, ...door })] });
      const leaf = strokeOf(list, "plan.wall.W.o.leaf");
      expectPoint(firstOf(leaf), pivot);
      expectPoint(lastOf(leaf), tip);
      expect(lengthOf(leaf)).toBeCloseTo(0.9, 9);
      const swing = strokeOf(list, "plan.wall.W.o.swing");
      expectPoint(firstOf(swing), tip);
      expectPoint(lastOf(swing), shut);
      for (const point of swing.points) expect(gap(point, pivot)).toBeCloseTo(0.9, 9);
    },
  );

  it("hangs two leaves of half the width, whose arcs meet in the middle", () => {
    const list = drawOne({ openings: [opening({ width: 1.8, leaves: 2 })] });
    for (const jamb of ["start", "end"]) {
      expect(lengthOf(strokeOf(list, `plan.wall.W.o.leaf.${jamb}`))).toBeCloseTo(0.9, 9);
      expectPoint(lastOf(strokeOf(list, `plan.wall.W.o.swing.${jamb}`)), [1.9, 2]);
    }
  });

  it.each([
    { name: "from downstage up", ends: { A: [0, 0], B: [0, 5] }, pivot: [0, 2] },
    { name: "from upstage down", ends: { A: [0, 5], B: [0, 0] }, pivot: [0, 4] },
  ] as const)("hinges on the upstage jamb unless told otherwise, in a wall $name", ({ ends, pivot }) => {
    const list = drawOne({ openings: [opening({})] }, { A: ends.A, B: ends.B });
    expectPoint(firstOf(strokeOf(list, "plan.wall.W.o.leaf")), pivot);
  });

  it("hangs on the face it swings toward in a thick wall", () => {
    const offstage = drawOne({ thickness: 0.2, openings: [opening({})] });
    expect(firstOf(strokeOf(offstage, "plan.wall.W.o.leaf"))[1]).toBeCloseTo(2.2, 9);
    const onstage = drawOne({ thickness: 0.2, openings: [opening({ swing: "onstage" })] });
    expect(firstOf(strokeOf(onstage, "plan.wall.W.o.leaf"))[1]).toBeCloseTo(2, 9);
  });
});

describe("other openings in plan", () => {
  it("draws a window's sill edges and the glass midway between them, on an open wall", () => {
    const list = drawOne({ thickness: 0.2, openings: [opening({ kind: "window", sill: 0.9 })] });
    const across = ["sill.onstage", "glass", "sill.offstage"].map((part) => strokeOf(list, `plan.wall.W.o.${part}`));
    expect(across.map((line) => firstOf(line)[1])).toEqual([2, 2.1, 2.2]);
    for (const line of across) expect(lengthOf(line)).toBeCloseTo(1, 9);
    expect(list.filter((item) => item.id.endsWith(".face"))).toHaveLength(2);
  });

  it("draws a window above the cut hidden, over a wall that runs on beneath it", () => {
    // Plans are cut about 4 ft above the floor: Auburn THEA 2310 drafting notes.
    expect(CUT_HEIGHT_M).toBeCloseTo(4 * 0.3048, 9);
    const list = drawOne({ openings: [opening({ kind: "window", sill: 1.8, head: 2.6 })] });
    expect(strokeOf(list, "plan.wall.W.o.glass").line).toBe("hidden");
    expect(list.filter((item) => item.id.endsWith(".face"))).toHaveLength(1);
  });

  it("recesses a niche offstage by its depth", () => {
    const list = drawOne({ openings: [opening({ kind: "niche", width: 1.2, depth: 0.45 })] });
    expect(strokeOf(list, "plan.wall.W.o.recess").points).toEqual([
      [1, 2],
      [1, 2.45],
      [2.2, 2.45],
      [2.2, 2],
    ]);
  });

  it.each(["arch", "passage"] as const)(
    "shows the header of an opening without a leaf (%s) as hidden lines across it",
    (kind) => {
      const list = drawOne({ thickness: 0.2, openings: [opening({ kind })] });
      const headers = list.filter((item) => item.id.includes(".header."));
      expect(headers).toHaveLength(2);
      for (const header of headers) {
        if (header.kind !== "stroke") throw new Error("A header is a line.");
        expect(header.line).toBe("hidden");
        expect(lengthOf(header)).toBeCloseTo(1, 9);
      }
      expect(list.some((item) => item.kind === "lettering" && item.text === "ARCH")).toBe(kind === "arch");
    },
  );

  it("shows the header over a door as hidden lines at both faces, as over any opening, and none where the wall stops at its head", () => {
    // Header as a hidden line over an opening: common practice, no source.
    const thick = drawOne({ thickness: 0.2, openings: [opening({ head: 2.1 })] });
    for (const [face, y] of [
      ["onstage", 2],
      ["offstage", 2.2],
    ] as const) {
      const header = strokeOf(thick, `plan.wall.W.o.header.${face}`);
      expect(header.line).toBe("hidden");
      expect(lengthOf(header)).toBeCloseTo(1, 9);
      expect(firstOf(header)[1]).toBeCloseTo(y, 9);
    }
    const headersOf = (list: ReturnType<typeof drawOne>) => list.filter((item) => item.id.includes(".header."));
    expect(headersOf(drawOne({ openings: [opening({})] }))).toHaveLength(1);
    for (const kind of ["door", "passage", "arch"] as const)
      expect(headersOf(drawOne({ height: 2.1, openings: [opening({ kind, head: 2.1 })] })), kind).toEqual([]);
  });
});
