import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { joinSolids } from "@/lib/plan/solids/join-solids";
import { type PrismOptions, prism } from "@/lib/plan/solids/prism";
import type { Solid } from "@/lib/plan/solids/solid";
import type { PlanPoint } from "@/lib/stage/frame";
import { seeded } from "../../seeded";
import { expectClosed, volume } from "./expect-closed";

const SQUARE: readonly PlanPoint[] = [
  [0, 1],
  [2, 1],
  [2, 3],
  [0, 3],
];
const HOLLOW: readonly PlanPoint[] = [...SQUARE.slice(0, 3), [1, 3], [1, 2], [0, 2]];

function upright(options: Partial<PrismOptions> = {}): Solid {
  return prism({ id: "b", element: "b", kind: "furniture", outline: SQUARE, bottom: 0, top: 1, ...options });
}

/** Expects each line's ends to be corners of an outline of each face it names, or points between them. */
function expectLinesOnFaces({ faces, lines }: Solid) {
  for (const { id, from, to, faces: between } of lines)
    for (const place of between) {
      const outline = faces[place]?.outline ?? [];
      const onEdge = (p: readonly number[]) =>
        outline.some((a, i) => {
          const b = outline[(i + 1) % outline.length] ?? a;
          const apart = (u: readonly number[], v: readonly number[]) =>
            Math.hypot(...u.map((n, k) => n - (v[k] as number)));
          return apart(a, p) + apart(p, b) - apart(a, b) < 1e-9;
        });
      expect(onEdge(from) && onEdge(to), `${id} lies on ${faces[place]?.id}`).toBe(true);
    }
}

describe("a prism", () => {
  it("over a square has six faces, twelve edges, each of two faces, and its outlines face outward", () => {
    const solid = upright();
    expect(solid.faces.map(({ id }) => id)).toEqual([
      "b.top",
      "b.bottom",
      "b.side.1",
      "b.side.2",
      "b.side.3",
      "b.side.4",
    ]);
    expect(solid.lines).toHaveLength(12);
    expect(solid.lines.every(({ faces }) => new Set(faces).size === 2)).toBe(true);
    expect(volume(solid.faces)).toBeCloseTo(4, 12);
    expectClosed(solid);
    expectLinesOnFaces(solid);
  });

  it("may be hollow", () => {
    const solid = upright({ outline: HOLLOW });
    expect(volume(solid.faces)).toBeCloseTo(3, 12);
    expectClosed(solid);
  });

  it("follows a raked floor with its foot under a level top", () => {
    const solid = upright({ bottom: { rake: 0.1, base: 0.2 } });
    // mean depth of the square is 2: mean height 1 - 0.2 - 0.2
    expect(volume(solid.faces)).toBeCloseTo(4 * 0.6, 12);
    expectClosed(solid);
    expectLinesOnFaces(solid);
  });

  it("bends its foot where it stands across the plaster line", () => {
    const outline = SQUARE.map(([x, y]): PlanPoint => [x, y - 2]);
    const solid = upright({ outline, bottom: { rake: 0.1, base: 0 } });
    expect(solid.faces.map(({ id }) => id)).toContain("b.bottom.downstage");
    // downstage half 2 x 1 x 1; upstage half the same less a wedge of 0.1 at its far end
    expect(volume(solid.faces)).toBeCloseTo(2 + 2 * 0.95, 12);
    expectClosed(solid);
    expectLinesOnFaces(solid);
  });

  it("is cut off where the floor rises through its top", () => {
    const solid = upright({ bottom: { rake: 0.5, base: 0 }, top: 1 });
    // floor 0.5 at y = 1 reaches the top at y = 2: a wedge 2 wide, 1 long, 0.5 high
    expect(volume(solid.faces)).toBeCloseTo(0.5, 12);
    expectClosed(solid);
    expectLinesOnFaces(solid);
    expect(upright({ bottom: { rake: 2, base: 0 } }).faces).toEqual([]);
  });

  it("is nothing where its top is not above its bottom", () => {
    for (const bottom of [1, 2]) expect(upright({ bottom })).toEqual({ faces: [], lines: [] });
    expect(upright({ outline: SQUARE.slice(0, 2) }).faces).toEqual([]);
  });

  it("leaves out the lines of ends that stand against something, and marks the uprights of a curve", () => {
    const solid = upright({ hide: ["top"], smooth: [1] });
    expect(solid.faces).toHaveLength(6);
    expect(solid.lines).toHaveLength(8);
    expect(solid.lines.filter(({ kind }) => kind === "smooth").map(({ id }) => id)).toEqual(["b.upright.2"]);
    expect(upright({ smooth: true }).lines.filter(({ kind }) => kind === "smooth")).toHaveLength(4);
  });

  it("is closed wherever it stands on whatever rake", () => {
    const place = fc.record({
      turn: fc.double({ min: -3, max: 3, noNaN: true }),
      y: fc.double({ min: -4, max: 6, noNaN: true }),
      rake: fc.double({ min: 0.001, max: 0.3, noNaN: true }),
      top: fc.double({ min: 0.05, max: 3, noNaN: true }),
    });
    fc.assert(
      fc.property(place, ({ turn, y, rake, top }) => {
        const outline = SQUARE.map(
          ([u, v]): PlanPoint => [
            (u - 1) * Math.cos(turn) - v * Math.sin(turn),
            y + (u - 1) * Math.sin(turn) + v * Math.cos(turn),
          ],
        );
        const solid = upright({ outline, bottom: { rake, base: 0 }, top });
        expectClosed(solid);
        expectLinesOnFaces(solid);
      }),
      seeded,
    );
  });
});

describe("joined solids", () => {
  it("count the faces of their lines anew", () => {
    const [one, two] = [upright(), upright({ id: "c" })];
    const both = joinSolids(one, two);
    expect(both.faces).toHaveLength(12);
    const named = ({ faces, lines }: Solid) => lines.map((line) => line.faces.map((place) => faces[place]?.id));
    expect(named(both)).toEqual([...named(one), ...named(two)]);
    expect(joinSolids()).toEqual({ faces: [], lines: [] });
  });
});
