import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { photoFromSheet, sheetFromPhoto } from "@/lib/photo/straighten/map-page";
import { seeded } from "@/tests/seeded";
import { viewSheet } from "./view-sheet";

/** Millimetres on the paper that going there and back may lose. */
const SAME_MM = 1e-7;

const anyView = fc.record({
  tiltDeg: fc.double({ min: -40, max: 40, noNaN: true }),
  turnDeg: fc.double({ min: -40, max: 40, noNaN: true }),
  rollDeg: fc.double({ min: -180, max: 180, noNaN: true }),
  k1: fc.double({ min: -0.08, max: 0.08, noNaN: true }),
});

describe("the way from a sheet to its photograph and back", () => {
  it("comes back to where it began, from any view", () => {
    fc.assert(
      fc.property(
        anyView,
        fc.double({ min: 0, max: 210, noNaN: true }),
        fc.double({ min: 0, max: 297, noNaN: true }),
        (view, right, down) => {
          const fit = viewSheet(210, 297, { width: 3000, height: 4000, ...view });
          const point = photoFromSheet(fit, [right, down]);
          const back = point && sheetFromPhoto(fit, point);
          if (!back) throw new Error("A place of the sheet is not seen.");
          expect(Math.hypot(back[0] - right, back[1] - down)).toBeLessThan(SAME_MM);
        },
      ),
      seeded,
    );
  });

  it("has the distortion as it is defined: the corner of the photograph is k1 of half its diagonal farther out", () => {
    const fit = viewSheet(300, 400, { width: 3000, height: 4000, fill: 1, k1: 0.02 });
    const [right, down] = photoFromSheet(fit, [0, 0]) ?? [Number.NaN, Number.NaN];
    // At fill 1 the sheet's corner would stand on the photograph's; half its diagonal is 2500 pixels, and 0.02 of it 50.
    expect(right).toBeCloseTo(-50 * 0.6, 6);
    expect(down).toBeCloseTo(-50 * 0.8, 6);
  });

  it("says so where there is nothing to say", () => {
    const tilted = viewSheet(210, 297, { width: 3000, height: 4000, tiltDeg: 35 });
    const far = [-100_000, 100_000].map((down) => photoFromSheet(tilted, [105, down]));
    expect(far.filter((each) => each === null)).toHaveLength(1);
    // Past the horizon of the sheet's plane.
    const horizon = [-100_000, 100_000].map((down) => sheetFromPhoto(tilted, [1500, down]));
    expect(horizon.filter((each) => each === null)).toHaveLength(1);
    // A lens bent inward folds: r (1 - r^2 / 4) is nowhere more than 0.77.
    expect(sheetFromPhoto({ ...tilted, k1: -0.25 }, [0, 0])).toBeNull();
    expect(
      sheetFromPhoto(
        {
          ...tilted,
          matrix: [
            [0, 0, 0],
            [0, 0, 0],
            [0, 0, 0],
          ],
        },
        [0, 0],
      ),
    ).toBeNull();
  });
});
