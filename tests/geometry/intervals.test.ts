import { describe, expect, it } from "vitest";
import { type Interval, intersect, unite, without } from "@/lib/geometry/intervals";

describe("stretches of a line", () => {
  it.each<[Interval[], Interval[]]>([
    [[], []],
    [
      [
        [2, 3],
        [0, 1],
      ],
      [
        [0, 1],
        [2, 3],
      ],
    ],
    [
      [
        [0, 2],
        [1, 3],
      ],
      [[0, 3]],
    ],
    [
      [
        [0, 1],
        [1, 2],
      ],
      [[0, 2]],
    ],
    [
      [
        [0, 5],
        [1, 2],
        [3, 3],
      ],
      [[0, 5]],
    ],
    [[[4, 4]], []],
  ])("%j united are %j", (given, united) => {
    expect(unite(given)).toEqual(united);
  });

  it.each<[Interval[], Interval[], Interval[]]>([
    [[[0, 2]], [[1, 3]], [[1, 2]]],
    [
      [
        [0, 1],
        [2, 3],
      ],
      [[0.5, 2.5]],
      [
        [0.5, 1],
        [2, 2.5],
      ],
    ],
    [[[0, 1]], [[1, 2]], []],
    [[], [[0, 1]], []],
  ])("%j and %j share %j", (one, other, shared) => {
    expect(intersect(one, other)).toEqual(shared);
    expect(intersect(other, one)).toEqual(shared);
  });

  it.each<[Interval, Interval[], Interval[]]>([
    [[0, 1], [], [[0, 1]]],
    [
      [0, 1],
      [[0.25, 0.5]],
      [
        [0, 0.25],
        [0.5, 1],
      ],
    ],
    [[0, 1], [[-1, 0.5]], [[0.5, 1]]],
    [[0, 1], [[0.5, 2]], [[0, 0.5]]],
    [[0, 1], [[-1, 2]], []],
    [
      [0, 1],
      [
        [2, 3],
        [-2, -1],
      ],
      [[0, 1]],
    ],
    [
      [0, 1],
      [
        [0.6, 0.8],
        [0.2, 0.7],
      ],
      [
        [0, 0.2],
        [0.8, 1],
      ],
    ],
    [
      [0, 1],
      [
        [2, 3],
        [0, 0.5],
        [4, 5],
      ],
      [[0.5, 1]],
    ],
  ])("of %j without %j is left %j", (whole, taken, left) => {
    expect(without(whole, taken)).toEqual(left);
  });
});
