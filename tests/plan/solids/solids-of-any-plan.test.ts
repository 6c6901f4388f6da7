import fc from "fast-check";
import { expect, it } from "vitest";
import { heightOver, planeOf } from "@/lib/geometry/plane";
import { OPENING_KINDS } from "@/lib/plan/plan";
import { solidsOfPlan } from "@/lib/plan/solids/solids-of-plan";
import { opening, planOf, wallAB } from "../../drawing/fixtures/plan-of";
import { seeded } from "../../seeded";

const length = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const place = fc.tuple(length(-8, 8), length(-2, 9));
const openings = fc.array(
  fc.record({
    kind: fc.constantFrom(...OPENING_KINDS),
    at: length(-1, 6),
    width: length(0, 3),
    sill: fc.oneof(fc.constant(0), length(0, 3)),
    head: length(0, 5),
    depth: fc.option(length(0, 1)),
    leaves: fc.constantFrom(1 as const, 2 as const),
    hinge: fc.constantFrom("start" as const, "end" as const, null),
    swing: fc.constantFrom("onstage" as const, "offstage" as const),
  }),
  { maxLength: 3 },
);
const wall = fc.record({
  height: length(0, 5),
  thickness: fc.oneof(fc.constant(0), length(0, 0.5)),
  base: fc.constantFrom(0, 0.6),
  onstage: fc.constantFrom("left" as const, "right" as const),
  openings,
});

it("solids of any walls, sensible or not, are finite and flat", () => {
  fc.assert(
    fc.property(
      fc.tuple(place, place, place, place),
      fc.tuple(wall, wall, wall),
      fc.constantFrom(0, 1 / 18),
      ([A, B, C, D], parts, rake) => {
        const ends = [
          ["A", "B"],
          ["B", "C"],
          ["C", "D"],
        ] as const;
        const walls = parts.map((part, i) => {
          const [from, to] = ends[i] ?? ["A", "B"];
          const cut = part.openings.map((o, k) => opening({ ...o, id: `o${k}` }));
          return wallAB({ ...part, id: `W${i}`, from, to, openings: cut });
        });
        const { faces, lines } = solidsOfPlan(planOf({ corners: { A, B, C, D }, walls }), { rake });
        for (const face of faces) {
          const plane = planeOf(face.outline);
          expect(plane, face.id).not.toBeNull();
          for (const point of [face.outline, ...face.holes].flat())
            expect(Math.abs(plane ? heightOver(plane, point) : 1), face.id).toBeLessThan(1e-9);
        }
        for (const { from, to } of lines) expect([...from, ...to].every(Number.isFinite)).toBe(true);
      },
    ),
    seeded,
  );
});
