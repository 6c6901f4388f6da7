import { describe, expect, it } from "vitest";
import { catchPoint, crossings, runOn } from "@/app/_sheet/catch-points";
import { ruleGraduations } from "@/app/_sheet/rule-graduations";

const BOUNDS = { left: -5, right: 5, bottom: 0, top: 5 };

describe("catching", () => {
  const view = { plane: "picture", origin: [0, 0], pxPerMetre: 100 } as const;
  const points = [
    { at: [1, 0], name: "one" },
    { at: [1.08, 0], name: "other" },
  ] as const;

  it("takes the nearest within reach and nothing beyond", () => {
    expect(catchPoint([103, 0], view, points, 11)?.name).toBe("one");
    expect(catchPoint([106, 0], view, points, 11)?.name).toBe("other");
    expect(catchPoint([140, 0], view, points, 11)).toBeNull();
  });
});

describe("crossings", () => {
  const drawn = [{ from: [-5, 2], to: [0, 2], name: "the horizon", endless: false }] as const;
  const blue = (from: readonly [number, number], to: readonly [number, number], name: string) => ({
    from,
    to,
    name,
    endless: true,
  });

  it("are where a blue line meets what is drawn, within its ends", () => {
    expect(crossings(drawn, [blue([-1, 0], [-1, 1], "line 1")], BOUNDS)).toEqual([
      { at: [-1, 2], name: "the crossing of the horizon and line 1" },
    ]);
    expect(crossings(drawn, [blue([1, 0], [1, 1], "line 1")], BOUNDS)).toEqual([]);
  });

  it("of parallels, or off the sheet, there are none", () => {
    expect(crossings(drawn, [blue([0, 3], [1, 3], "line 1")], BOUNDS)).toEqual([]);
    expect(crossings([], [blue([0, 0], [1, 0], "a"), blue([0, 1], [100, 0.99], "b")], BOUNDS)).toEqual([]);
  });
});

describe("a line run on", () => {
  it("reaches the edges both ways", () => {
    expect(runOn([0, 1], [1, 2], BOUNDS)).toEqual([
      [-1, 0],
      [4, 5],
    ]);
  });
  it("is none where it misses, or has no direction", () => {
    expect(runOn([0, 9], [1, 9], BOUNDS)).toBeNull();
    expect(runOn([1, 1], [1, 1], BOUNDS)).toBeNull();
  });
});

describe("a scale rule", () => {
  // By the scales' own meaning: 1/4 in = 1 ft puts the tenth foot at 2 1/2 in.
  it.each([
    ["ft-in", 96, 10, 31.75],
    ["ft-in", 48, 10, 63.5],
    ["ft-in", 24, 10, 127],
    ["m", 50, 5, 100],
    ["m", 100, 10, 100],
  ] as const)("in %s at 1:%d has %d at %d mm", (units, ratio, number, atMm) => {
    const there = ruleGraduations(ratio, units).find(({ letters }) => letters === String(number));
    expect(there?.atMm).toBeCloseTo(atMm, 9);
  });

  it("has no two graduations closer than can be told apart", () => {
    for (const ratio of [12, 24, 32, 48, 64, 96]) {
      const all = ruleGraduations(ratio, "ft-in").map(({ atMm }) => atMm);
      for (let i = 1; i < all.length; i++) expect((all[i] ?? 0) - (all[i - 1] ?? 0)).toBeGreaterThan(0.89);
    }
  });
});
