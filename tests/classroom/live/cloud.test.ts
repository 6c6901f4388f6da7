import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cloudOf, HELD_SHARE, type Place } from "@/lib/classroom/live/cloud";

describe("the cloud of marks", () => {
  it.each<readonly [string, readonly Place[], Place | null]>([
    ["nobody", [], null],
    ["one", [[2, 3]], [2, 3]],
    [
      "two",
      [
        [0, 0],
        [2, 4],
      ],
      [1, 2],
    ],
  ])("%s: a mean and no spread", (_, places, mean) => {
    expect(cloudOf(places)).toEqual({ count: places.length, mean, spread: { kind: "none" } });
  });

  it("is none when all agree, and a line when they lie on one", () => {
    const same: Place = [1.5, -2];
    expect(cloudOf([same, same, same]).spread.kind).toBe("none");
    const spread = cloudOf([
      [0, 0],
      [1, 1],
      [2, 2],
    ]).spread;
    expect(spread.kind).toBe("line");
    if (spread.kind === "line") expect(spread.turn).toBeCloseTo(Math.PI / 4, 12);
  });

  it("has the axes of the sample covariance", () => {
    // Covariance by hand, over n - 1 = 3: xx = 8/3, yy = 2/3, xy = 0.
    const { spread, mean } = cloudOf([
      [2, 0],
      [-2, 0],
      [0, 1],
      [0, -1],
    ]);
    expect(mean).toEqual([0, 0]);
    if (spread.kind !== "ellipse") throw new Error(`A ${spread.kind} is no ellipse.`);
    const sigmas = Math.sqrt(2 * Math.log(3));
    expect(spread.halfLong).toBeCloseTo(sigmas * Math.sqrt(8 / 3), 12);
    expect(spread.halfShort).toBeCloseTo(sigmas * Math.sqrt(2 / 3), 12);
    expect(spread.turn).toBeCloseTo(0, 12);
  });

  it("turns and moves with its marks", () => {
    const number = fc.double({ min: -20, max: 20, noNaN: true });
    fc.assert(
      fc.property(
        fc.array(fc.tuple(number, number), { minLength: 3, maxLength: 40 }),
        fc.double({ min: 0, max: Math.PI, noNaN: true }),
        (places, angle) => {
          const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
          const turned = places.map(([x, y]): Place => [x * cos - y * sin + 3, x * sin + y * cos - 1]);
          const [a, b] = [cloudOf(places).spread, cloudOf(turned).spread];
          if (a.kind !== "ellipse" || b.kind !== "ellipse" || a.halfShort < 1e-3) return;
          expect(b.halfLong).toBeCloseTo(a.halfLong, 6);
          expect(b.halfShort).toBeCloseTo(a.halfShort, 6);
          if (a.halfLong - a.halfShort < 1e-2) return;
          expect(Math.sin(b.turn - a.turn - angle)).toBeCloseTo(0, 5);
        },
      ),
    );
  });

  it("holds two marks in three of a normal scatter", () => {
    // Normal pairs by the method of Box and Muller (1958), from a fixed stream of numbers.
    let seed = 12345;
    const next = () => {
      seed = (seed * 1103515245 + 12345) % 2147483648;
      return (seed + 0.5) / 2147483648;
    };
    const places = Array.from({ length: 4000 }, (): Place => {
      const [r, t] = [Math.sqrt(-2 * Math.log(next())), 2 * Math.PI * next()];
      return [3 * r * Math.cos(t), r * Math.sin(t)];
    });
    const { spread, mean } = cloudOf(places);
    if (spread.kind !== "ellipse" || !mean) throw new Error("A wide scatter has an ellipse.");
    const [cos, sin] = [Math.cos(spread.turn), Math.sin(spread.turn)];
    const held = places.filter(([x, y]) => {
      const [dx, dy] = [x - mean[0], y - mean[1]];
      return ((dx * cos + dy * sin) / spread.halfLong) ** 2 + ((dy * cos - dx * sin) / spread.halfShort) ** 2 <= 1;
    });
    expect(Math.abs(held.length / places.length - HELD_SHARE)).toBeLessThan(0.03);
  });
});
