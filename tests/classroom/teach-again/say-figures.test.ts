import { describe, expect, it } from "vitest";
import type { ItemFigures } from "@/lib/classroom/teach-again/item-analysis";
import { sayDifficulty, sayDiscrimination, saySmall, saySpread } from "@/lib/classroom/teach-again/say-figures";
import { spreadOf } from "@/lib/classroom/teach-again/spread-ellipse";

const figures = (r: number, pairs: number): ItemFigures => ({
  n: pairs,
  difficulty: 0.625,
  discrimination: { kind: "found", r, pairs },
});

describe("figures in words", () => {
  it.each([
    [0.4, 20, "0.40, well"],
    [0.39, 20, "0.39, fairly"],
    [0.2, 8, "0.20, fairly"],
    [0.19, 8, "0.19, hardly"],
    [-0.3, 20, "-0.30, the wrong way round"],
    [0.9, 7, "0.90, well, of only 7"],
  ])("a correlation of %f, of %i", (r, pairs, words) => expect(sayDiscrimination(figures(r, pairs))).toBe(words));
  it("says why there is none", () => {
    const none = (why: "few" | "alike") =>
      sayDiscrimination({ ...figures(0, 0), discrimination: { kind: "none", why } });
    expect([none("few"), none("alike")]).toEqual(["too few to tell", "all scores are alike"]);
  });
  it("says a share", () => {
    expect(sayDifficulty(figures(0, 9))).toBe("63 %");
    expect(sayDifficulty({ ...figures(0, 9), difficulty: null })).toBe("nobody yet");
  });
  it.each([
    [8, ""],
    [7, "This is a small class, of 7"],
  ])("says that %i are few", (students, start) => {
    if (start === "") expect(saySmall(students)).toBe("");
    else expect(saySmall(students)).toContain(start);
  });
  it("says a spread, and that there is none", () => {
    const mm = (metres: number) => metres * 1000;
    expect(saySpread(spreadOf([]), mm)).toBe("With 0 marks there is no spread yet.");
    expect(saySpread(spreadOf([[0, 0]]), mm)).toBe("With one mark there is no spread yet.");
    expect(
      saySpread(
        spreadOf([
          [1, 1],
          [1, 1],
          [1, 1],
        ]),
        mm,
      ),
    ).toBe("All 3 marks lie at one place.");
    // Variances of 1 and 0.25 square millimetres, worked by hand.
    const cross = [
      [-1, 0],
      [1, 0],
      [0, -0.5],
      [0, 0.5],
      [0, 0],
    ].map(([x = 0, y = 0]) => [(x * Math.SQRT2) / 1000, (y * Math.SQRT2) / 1000] as const);
    expect(saySpread(spreadOf(cross), mm)).toContain("They spread by 1.0 mm of paper one way and 0.5 mm across it");
    expect(saySpread(spreadOf(cross), mm)).toContain("1.386 for 50 % and 5.991 for 95 %");
  });
});
