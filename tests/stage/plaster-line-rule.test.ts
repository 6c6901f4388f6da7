import { describe, expect, it } from "vitest";
import { ruleTicks } from "@/lib/stage/plaster-line-rule";

describe("ruleTicks", () => {
  it.each([
    ["every foot", 4 * 0.3048, "ft-in", [-2, -1, 0, 1, 2].map((feet) => feet * 0.3048)],
    ["every foot short of the edge", 5.9 * 0.3048, "ft-in", [-2, -1, 0, 1, 2].map((feet) => feet * 0.3048)],
    ["every half metre", 2, "m", [-1, -0.5, 0, 0.5, 1]],
    ["none but the middle of a narrow opening", 0.4, "m", [0]],
    ["none of an opening turned inside out", -4, "m", []],
    ["none of no opening", Number.NaN, "m", []],
  ] as const)("%s", (_, width, units, expected) => {
    const ticks = ruleTicks(width, units);
    expect(ticks).toHaveLength(expected.length);
    ticks.forEach((tick, i) => {
      expect(tick).toBeCloseTo(expected[i] as number, 12);
    });
  });
});
