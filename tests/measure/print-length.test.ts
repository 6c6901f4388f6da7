import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { INCH_M, parseLength } from "@/lib/measure/length";
import { printLength } from "@/lib/measure/print-length";
import { seeded } from "../seeded";

/** Half of the finest fraction shown, a sixteenth of an inch. */
const HALF_SIXTEENTH_M = INCH_M / 32;

describe("printLength", () => {
  it.each([
    [0, `0"`],
    [6, `6"`],
    [0.5, `1/2"`],
    [0.75, `3/4"`],
    [3.5, `3 1/2"`],
    [11.9375, `11 15/16"`],
    [12, `1'-0"`],
    [12.5, `1'-0 1/2"`],
    [87, `7'-3"`],
    [87.5, `7'-3 1/2"`],
    [87.0625, `7'-3 1/16"`],
    // rounding up carries into the foot
    [11.99, `1'-0"`],
    [23.99, `2'-0"`],
    [-87.5, `-7'-3 1/2"`],
    [-0.01, `0"`],
  ])("writes %s inches as %s", (inches, expected) => {
    expect(printLength(inches * INCH_M, "ft-in")).toBe(expected);
  });

  it.each([
    [87.6, `7'-4"`],
    [0.4, `0"`],
    [-87.6, `-7'-4"`],
  ])("writes %s inches to the nearest inch as %s", (inches, expected) => {
    expect(printLength(inches * INCH_M, "ft-in", "near")).toBe(expected);
  });

  // Metric plans are shown in millimetres.
  it.each([
    [3.6, "exact", "3600 mm"],
    [0.4504, "exact", "450 mm"],
    [-3.6, "exact", "-3600 mm"],
    [-0.0001, "exact", "0 mm"],
    [3.604, "near", "3600 mm"],
    [3.606, "near", "3610 mm"],
  ] as const)("writes %s m, %s, as %s", (metres, fineness, expected) => {
    expect(printLength(metres, "m", fineness)).toBe(expected);
  });

  it.each([1e308, -1e308, Number.POSITIVE_INFINITY, Number.NaN])("says %s in words", (metres) => {
    expect(printLength(metres, "ft-in")).toBe("more than a million kilometres");
    expect(printLength(metres, "m")).toBe("more than a million kilometres");
  });

  it("writes what parseLength reads back, within half a sixteenth of an inch or half a millimetre", () => {
    fc.assert(
      fc.property(fc.double({ min: -1000, max: 1000, noNaN: true }), (length) => {
        for (const [units, most] of [
          ["ft-in", HALF_SIXTEENTH_M],
          ["m", 0.0005],
        ] as const) {
          const parsed = parseLength(printLength(length, units), units);
          expect(parsed.ok ? Math.abs(parsed.metres - length) : Number.NaN).toBeLessThanOrEqual(most + 1e-9);
        }
      }),
      seeded,
    );
  });
});
