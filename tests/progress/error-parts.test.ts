import { describe, expect, it } from "vitest";
import { type ErrorParts, type Part, wrongParts } from "@/lib/progress/error-parts";

const NONE: ErrorParts = { place: 3, depth: null, across: null, height: null, wall: null };

describe("wrongParts, with a tolerance of 2 mm", () => {
  const cases: readonly (readonly [string, Partial<ErrorParts>, boolean, readonly Part[]])[] = [
    ["within tolerance nothing is wrong", { depth: 1, across: 3 }, true, []],
    ["a part beyond the tolerance", { depth: -4, across: 1 }, false, ["place", "depth"]],
    ["two parts beyond it", { depth: 4, across: -3 }, false, ["place", "depth", "across"]],
    ["neither part alone: the larger", { depth: 1.6, across: -1.9 }, false, ["place", "across"]],
    ["neither part alone, the other way", { depth: -1.9, across: 1.6 }, false, ["place", "depth"]],
    ["off the wall's line too", { depth: 4, across: 1, wall: -2.5 }, false, ["place", "depth", "wall"]],
    ["a height and a sideways part", { height: 5, across: 0 }, false, ["place", "height"]],
    ["no part at all: a mark behind the eye", { place: null }, false, ["place"]],
  ];
  it.each(cases)("%s", (_name, parts, within, wrong) => {
    expect([...wrongParts({ ...NONE, ...parts }, within, 2)].sort()).toEqual([...wrong].sort());
  });
});
