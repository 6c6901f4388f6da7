import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { intersectionLines } from "@/lib/drawing/hidden-lines/intersection-lines";
import type { SceneLine } from "@/lib/drawing/hidden-lines/visible-lines";
import type { Face } from "@/lib/plan/solids/solid";
import type { StagePoint } from "@/lib/stage/frame";
import { seeded } from "../../seeded";
import { anySceneOf } from "./arbitrary-scenes";
import { MARGIN_M, offPlane, placeOn, rayFace } from "./ray-check";

/** Rounding left in a place found, metres; faces at a hundredth of a degree to one another have the most. */
const ROUNDING_M = 1e-8;

/** How near an end of a line found must come to where a face's side goes through the other face, metres. */
const SAME_PLACE_M = 1e-6;

const between = (a: StagePoint, b: StagePoint, t: number): StagePoint => [
  a[0] + (b[0] - a[0]) * t,
  a[1] + (b[1] - a[1]) * t,
  a[2] + (b[2] - a[2]) * t,
];

/** Where a side of one face goes clearly through the other: its ends well to either side, the place well inside. */
function piercings(one: Face, other: Face): readonly StagePoint[] {
  const flat = rayFace(other);
  return [one.outline, ...one.holes].flatMap((ring) =>
    ring.flatMap((from, i) => {
      const to = ring[(i + 1) % ring.length] as StagePoint;
      const [a, b] = [offPlane(flat, from), offPlane(flat, to)];
      if (a * b >= 0 || Math.min(Math.abs(a), Math.abs(b)) < MARGIN_M) return [];
      const place = between(from, to, a / (a - b));
      return placeOn(flat, place) === "inside" ? [place] : [];
    }),
  );
}

/** How far a point is from the nearer end of the nearest of some lines. */
function gapToEnds(point: StagePoint, lines: readonly SceneLine[]): number {
  const gaps = lines.flatMap(({ from, to }) =>
    [from, to].map((end) => Math.hypot(...end.map((value, i) => value - (point[i] ?? 0)))),
  );
  return Math.min(Infinity, ...gaps);
}

describe("lines in which faces pass through one another", () => {
  for (const kind of ["flats with windows", "boards through one another", "boxes on a raked floor"]) {
    it(`${kind}: each lies in both faces, and one ends wherever a side goes through a face`, () => {
      let found = 0;
      let pierced = 0;
      fc.assert(
        fc.property(anySceneOf[kind] ?? fc.constant({ faces: [], lines: [] }), ({ faces }) => {
          const lines = intersectionLines(faces);
          const flat = faces.map(rayFace);
          for (const { from, to, faces: pair } of lines) {
            found++;
            for (const t of [0, 0.5, 1]) {
              for (const i of pair) {
                const face = flat[i];
                if (!face) throw new Error("A line names a face that is not there.");
                expect(Math.abs(offPlane(face, between(from, to, t)))).toBeLessThan(ROUNDING_M);
                expect(placeOn(face, between(from, to, t))).not.toBe("outside");
              }
            }
          }
          faces.forEach((one, i) => {
            faces.forEach((other, j) => {
              if (i === j) return;
              const named = lines.filter((line) => line.faces.includes(i) && line.faces.includes(j));
              for (const place of piercings(one, other)) {
                pierced++;
                expect(gapToEnds(place, named)).toBeLessThan(SAME_PLACE_M);
              }
            });
          });
        }),
        seeded,
      );
      expect(found).toBeGreaterThan(seeded.numRuns / 2);
      expect(pierced).toBeGreaterThan(seeded.numRuns / 2);
    });
  }
});
