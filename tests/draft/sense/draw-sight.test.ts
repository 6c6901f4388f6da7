import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { newDraft } from "@/lib/draft/new-draft";
import { drawSight } from "@/lib/draft/sense/sightlines/draw-sight";
import { hatchOutline } from "@/lib/draft/sense/sightlines/hatch-outline";
import { areaOf } from "@/lib/draft/sense/sightlines/merge-fans";
import { usualSeats } from "@/lib/draft/sense/sightlines/seat";
import { sightlines } from "@/lib/draft/sense/sightlines/sightlines";
import { distance } from "@/lib/geometry/vector";
import { insideOutline } from "@/lib/plan/surface-level";
import { seeded } from "../../seeded";

describe("hatching of an outline", () => {
  it("covers it evenly: its strokes' length times their distance is the area, and they stay inside", () => {
    const corner = fc.tuple(fc.double({ min: -5, max: 5, noNaN: true }), fc.double({ min: -5, max: 5, noNaN: true }));
    fc.assert(
      fc.property(corner, corner, corner, corner, (a, b, c, d) => {
        const outline = [a, b, c, d];
        const lines = hatchOutline([a, b, c], 0.02);
        const length = lines.reduce((sum, [from, to]) => sum + distance(from, to), 0);
        expect(Math.abs(length * 0.02 - Math.abs(areaOf([a, b, c])))).toBeLessThan(0.6);
        for (const [[x, y], [u, v]] of hatchOutline(outline, 0.3))
          expect(insideOutline(outline, [(x + u) / 2, (y + v) / 2])).toBe(true);
      }),
      seeded,
    );
  });

  it("runs at 45 degrees and is nothing of a line", () => {
    const square = hatchOutline(
      [
        [0, 0],
        [1, 0],
        [1, 1],
        [0, 1],
      ],
      0.25,
    );
    for (const [[x, y], [u, v]] of square) expect(v - y).toBeCloseTo(u - x, 12);
    expect(square.length).toBe(5);
    expect(
      hatchOutline(
        [
          [0, 0],
          [1, 1],
        ],
        0.1,
      ),
    ).toEqual([]);
  });
});

describe("the drawing of a seat's sight", () => {
  it("hatches in red what is seen offstage, and gives every line a name of its own", () => {
    const draft = newDraft("m");
    const { stage, viewer, scaleRatio } = draft.exercise;
    for (const sight of sightlines(draft, usualSeats(stage, viewer))) {
      const list = drawSight(sight, scaleRatio);
      const ids = list.map(({ id }) => id);
      expect(new Set(ids).size).toBe(ids.length);
      const hatched = list.filter(({ id }) => id.includes(".hatch."));
      expect(hatched.length).toBeGreaterThan(0);
      expect(hatched.every(({ pencil }) => pencil === "red")).toBe(true);
    }
  });
});
