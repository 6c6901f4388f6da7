import { describe, expect, it } from "vitest";
import { rollDice } from "@/lib/generator/dice";

function draw(seed: number, purpose: string): readonly number[] {
  const dice = rollDice(seed, purpose);
  return Array.from({ length: 8 }, () => dice.whole(0, 999));
}

describe("the dice", () => {
  it("fall the same for the same seed and purpose", () => {
    expect(draw(4711, "walls 2")).toEqual(draw(4711, "walls 2"));
  });

  it.each([
    { what: "a neighbouring seed", seed: 4712, purpose: "walls 2" },
    { what: "another purpose", seed: 4711, purpose: "walls 3" },
    { what: "a seed beyond 32 bits", seed: 4711 + 2 ** 32, purpose: "walls 2" },
  ])("fall otherwise for $what", ({ seed, purpose }) => {
    expect(draw(seed, purpose)).not.toEqual(draw(4711, "walls 2"));
  });

  it("fall evenly", () => {
    const dice = rollDice(0, "even");
    const counts = [0, 0, 0, 0, 0, 0];
    for (let i = 0; i < 6000; i += 1) {
      const face = dice.whole(0, 5);
      counts[face] = (counts[face] ?? 0) + 1;
    }
    // Five standard deviations of a fair die over 6000 throws: 5 * sqrt(6000 * 1/6 * 5/6) = 144.
    for (const count of counts) expect(Math.abs(count - 1000)).toBeLessThan(145);
  });

  it("give halves within their bounds, and every item of a shuffled list once", () => {
    const dice = rollDice(7, "halves");
    for (let i = 0; i < 200; i += 1) {
      const value = dice.half(1.25, 3);
      expect([1.5, 2, 2.5, 3]).toContain(value);
    }
    expect([...dice.shuffle([1, 2, 3, 4, 5])].sort()).toEqual([1, 2, 3, 4, 5]);
    expect([1, -1]).toContain(dice.side());
    expect([dice.chance(0), dice.chance(100)]).toEqual([false, true]);
  });
});
