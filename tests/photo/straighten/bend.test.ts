import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Bend, bendPlace, photoFromBent, unbendPlace } from "@/lib/photo/straighten/bend";
import { fitBend, leftOver, type SeenGuide } from "@/lib/photo/straighten/fit-bend";
import { photoFromSheet } from "@/lib/photo/straighten/map-page";
import type { SheetPlace } from "@/lib/sheet/place-drawings";
import { viewSheet } from "./view-sheet";

const FRAME = { middle: [105, 148.5], unitMm: 182 } as const;
const coefficient = fc.double({ min: -2, max: 2, noNaN: true });
const coefficients = fc.array(coefficient, { minLength: 10, maxLength: 10 });
const place = fc.tuple(fc.double({ min: 0, max: 210, noNaN: true }), fc.double({ min: 0, max: 297, noNaN: true }));

describe("a bend", () => {
  it("moves by the terms of a worked case", () => {
    // At x = 0.5, y = -1 in its units: 1 + x y - y^2 + 2 x^3 = -0.25 to the right, 3 y^3 = -3 down.
    const bend: Bend = {
      middle: [100, 100],
      unitMm: 50,
      right: [1, 0, 0, 0, 1, -1, 2, 0, 0, 0],
      down: [0, 0, 0, 0, 0, 0, 0, 0, 0, 3],
    };
    const [right, down] = bendPlace(bend, [125, 50]);
    expect(right).toBeCloseTo(124.75, 12);
    expect(down).toBeCloseTo(47, 12);
  });

  it("is undone by the way back", () => {
    fc.assert(
      fc.property(coefficients, coefficients, place, (right, down, at) => {
        const bend: Bend = { ...FRAME, right, down };
        const back = unbendPlace(bend, bendPlace(bend, at));
        expect(back?.[0]).toBeCloseTo(at[0], 6);
        expect(back?.[1]).toBeCloseTo(at[1], 6);
      }),
    );
  });

  it("where there is none leaves places where they are", () => {
    const fit = viewSheet(210, 297, { width: 3000, height: 4000, tiltDeg: 20, k1: 0.02 });
    expect(unbendPlace(null, [30, 40])).toEqual([30, 40]);
    expect(photoFromBent(fit, null, [30, 40])).toEqual(photoFromSheet(fit, [30, 40]));
  });

  it("is found from stretches seen across only, one in five of which are something else", () => {
    fc.assert(
      fc.property(coefficients, coefficients, (right, down) => {
        const bend: Bend = { ...FRAME, right, down };
        const seen = stretches(bend).map(
          (each, i): SeenGuide => (i % 5 === 2 ? { ...each, offMm: each.offMm + 0.3 + (i % 7) / 10 } : each),
        );
        const fitted = fitBend(seen, FRAME);
        if (!fitted) throw new Error("No bend was fitted.");
        expect(fitted.kept.filter((kept, i) => kept === (i % 5 !== 2)).length).toBe(seen.length);
        for (const at of [
          [20, 20],
          [105, 150],
          [190, 280],
          [60, 250],
        ] as const) {
          const [found, truly] = [bendPlace(fitted.bend, at), bendPlace(bend, at)];
          expect(Math.hypot(found[0] - truly[0], found[1] - truly[1])).toBeLessThan(0.02);
        }
      }),
      { numRuns: 40 },
    );
  });

  it("is less sure far from the stretches that it rests on", () => {
    const near = stretches(null).filter(({ guide }) => guide.at[1] < 150);
    const fitted = fitBend(near, FRAME);
    expect(fitted?.unsureMm([105, 280])).toBeGreaterThan(5 * (fitted?.unsureMm([105, 80]) ?? NaN));
  });
});

/** Level and upright stretches over a whole sheet, seen where a bend has them. */
function stretches(bend: Bend | null): readonly SeenGuide[] {
  return Array.from({ length: 11 * 15 }, (_, i): SeenGuide => {
    const at: SheetPlace = [5 + 20 * (i % 11), 8 + 20 * Math.floor(i / 11)];
    const along = i % 2 === 0 ? ([1, 0] as const) : ([0, 1] as const);
    const guide = { at, along, lengthMm: 4, widthMm: 0.5 };
    return { guide, offMm: -(leftOver([{ guide, offMm: 0 }], bend)[0] as number), weight: 1 };
  });
}
