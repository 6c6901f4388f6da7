import { describe, expect, it } from "vitest";
import type { Wall } from "@/lib/plan/plan";
import { openingJambs, placeOnWall, wallLine } from "@/lib/plan/wall-line";
import type { PlanPoint } from "@/lib/stage/frame";

const WALL: Wall = {
  id: "W1",
  from: "A",
  to: "B",
  height: 3,
  thickness: 0.1,
  base: 0,
  onstage: "right",
  openings: [],
};

function line(from: PlanPoint, to: PlanPoint, more: Partial<Wall> = {}) {
  return wallLine(
    {
      corners: new Map([
        ["A", from],
        ["B", to],
      ]),
    },
    { ...WALL, ...more },
  );
}

describe("wallLine", () => {
  it.each([
    // walls are listed from stage right round to stage left, so that onstage is to the right of from -> to
    ["the stage right wall, going upstage", [-3, 1], [-3, 5], {}, [-1, 0]],
    ["the back wall, going to stage left", [-3, 5], [3, 5], {}, [0, 1]],
    ["the stage left wall, going downstage", [3, 5], [3, 1], {}, [1, 0]],
    ["a wall listed the other way", [3, 5], [-3, 5], { onstage: "left" }, [0, 1]],
    ["a wall whose back is seen", [-3, 5], [3, 5], { onstage: "left" }, [0, -1]],
  ] as const)("of %s has offstage behind it", (_, from, to, more, offstage) => {
    const found = line(from, to, more);
    expect(found?.offstage[0]).toBeCloseTo(offstage[0], 12);
    expect(found?.offstage[1]).toBeCloseTo(offstage[1], 12);
  });

  it("knows its length and direction", () => {
    const found = line([0, 0], [3, 4]);
    expect(found?.length).toBe(5);
    expect(found?.along).toEqual([0.6, 0.8]);
    expect(found && placeOnWall(found, 2.5)).toEqual([1.5, 2]);
    expect(found && openingJambs(found, { at: 1, width: 2 })).toEqual({
      start: [0.6, 0.8],
      middle: [1.2, 1.6],
      end: [0.6 * 3, 0.8 * 3],
    });
  });

  it("is none without a corner, or between two corners in one place", () => {
    expect(line([1, 1], [1, 1])).toBeNull();
    expect(wallLine({ corners: new Map([["A", [0, 0]]]) }, WALL)).toBeNull();
    expect(wallLine({ corners: new Map() }, WALL)).toBeNull();
  });
});
