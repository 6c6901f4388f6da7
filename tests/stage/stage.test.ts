import { describe, expect, it } from "vitest";
import { backWallCorners, floorHeight, onFloor } from "@/lib/stage/stage";

describe("floorHeight", () => {
  // z = rake * max(y, 0): the apron is level.
  it.each([
    [0, 7, 0],
    [0.05, 6, 0.3],
    [1 / 24, 12, 0.5],
    [0.05, 0, 0],
    [0.05, -2, 0],
  ])("on a rake of %s, %s m upstage, is %s m", (rake, y, expected) => {
    expect(floorHeight({ rake }, y)).toBeCloseTo(expected, 12);
    expect(onFloor({ rake }, [1.5, y])).toEqual([1.5, y, floorHeight({ rake }, y)]);
  });
});

describe("backWallCorners", () => {
  it("stand as wide as the opening, on the raked floor, and end at the opening's height", () => {
    const stage = { opening: { width: 10, height: 6 }, depth: 8, apron: 1, rake: 0.05 };
    expect(backWallCorners(stage)).toEqual([
      [-5, 8, 0.4],
      [5, 8, 0.4],
      [-5, 8, 6],
      [5, 8, 6],
    ]);
  });
});
