import { describe, expect, it } from "vitest";
import { listEdges, topOfCorner } from "@/lib/plan/list-edges";
import { namePoints } from "@/lib/plan/name-points";
import { type Change, readTideOffice } from "../fixtures/tide-office";

function edgesOf(...changes: readonly Change[]) {
  const { plan, stage } = readTideOffice(...changes);
  const points = namePoints(plan, stage);
  return { plan, points, edges: listEdges(plan, points) };
}

describe("listEdges", () => {
  it("joins a wall's corners, foot and top, and its uprights once each", () => {
    const ids = edgesOf().edges.map(({ id }) => id);
    expect(ids).toContain("B.foot~C.foot");
    expect(ids).toContain("B.top~C.top");
    expect(ids.filter((id) => id === "B.foot~B.top")).toHaveLength(1);
    expect(new Set(ids).size).toBe(ids.length);
  });

  it("draws a sill only where it is off the floor", () => {
    const ids = edgesOf().edges.map(({ id }) => id);
    expect(ids).toContain("W3.lookout.start.sill~W3.lookout.end.sill");
    expect(ids).not.toContain("W4.door.start.sill~W4.door.end.sill");
    expect(ids).toContain("W4.door.start.head~W4.door.end.head");
  });

  it.each([
    // four walls' foot, top and (shared) uprights; two openings, one with a sill; boxes of twelve edges
    ["foot", 4],
    ["top", 4],
    ["upright", 5],
    ["opening", 7],
    ["platform", 12],
    ["stair", 1],
    ["furniture", 12],
    ["column", 1],
  ])("lists the edges that are %s", (kind, count) => {
    expect(edgesOf().edges.filter((edge) => edge.kind === kind)).toHaveLength(count);
  });

  it("runs only between points that there are", () => {
    const { edges, points } = edgesOf(
      ["/plan/walls/0/from", "nowhere"],
      [
        "/plan/stairs/0/nosing",
        [
          [1, 1],
          [1, 1],
        ],
      ],
    );
    for (const { from, to } of edges) expect([points.has(from), points.has(to)]).toEqual([true, true]);
    expect(edges.some(({ element }) => element === "W1" || element === "S1")).toBe(true);
    expect(edges.some(({ kind }) => kind === "stair")).toBe(false);
  });

  it("ends each wall at its own top where the heights differ", () => {
    const { edges, plan, points } = edgesOf(["/plan/walls/2/height", 12]);
    const ids = edges.map(({ id }) => id);
    expect(ids).toContain("B.top.W3~C.top.W3");
    expect(ids).toContain("A.top~B.top.W2");
    expect(topOfCorner("B", plan.walls[1] ?? { id: "" }, points)).toBe("B.top.W2");
    expect(topOfCorner("A", plan.walls[1] ?? { id: "" }, points)).toBe("A.top");
  });
});
