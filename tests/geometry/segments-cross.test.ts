import { describe, expect, it } from "vitest";
import { distanceToSegment, isJunction, segmentsCross } from "@/lib/geometry/segments-cross";
import type { Vector2 } from "@/lib/geometry/vector";

type Segment = readonly [Vector2, Vector2];

describe("segmentsCross", () => {
  it.each<{ what: string; one: Segment; other: Segment; cross: boolean }>([
    {
      what: "through each other",
      one: [
        [0, 0],
        [4, 4],
      ],
      other: [
        [0, 4],
        [4, 0],
      ],
      cross: true,
    },
    {
      what: "one ends on the middle of the other",
      one: [
        [0, 0],
        [4, 0],
      ],
      other: [
        [2, 0],
        [2, 3],
      ],
      cross: true,
    },
    {
      what: "over each other in part",
      one: [
        [0, 0],
        [4, 0],
      ],
      other: [
        [2, 0],
        [6, 0],
      ],
      cross: true,
    },
    {
      what: "one within the other",
      one: [
        [0, 0],
        [4, 0],
      ],
      other: [
        [1, 0],
        [2, 0],
      ],
      cross: true,
    },
    {
      what: "from a shared end, one over the other",
      one: [
        [0, 0],
        [4, 0],
      ],
      other: [
        [0, 0],
        [2, 0],
      ],
      cross: true,
    },
    {
      what: "the same twice",
      one: [
        [0, 0],
        [4, 0],
      ],
      other: [
        [0, 0],
        [4, 0],
      ],
      cross: true,
    },
    {
      what: "the same, turned round",
      one: [
        [0, 0],
        [4, 0],
      ],
      other: [
        [4, 0],
        [0, 0],
      ],
      cross: true,
    },
    {
      what: "sharing an end",
      one: [
        [0, 0],
        [4, 0],
      ],
      other: [
        [4, 0],
        [4, 3],
      ],
      cross: false,
    },
    {
      what: "sharing an end, in one line",
      one: [
        [0, 0],
        [4, 0],
      ],
      other: [
        [4, 0],
        [8, 0],
      ],
      cross: false,
    },
    {
      what: "apart",
      one: [
        [0, 0],
        [4, 0],
      ],
      other: [
        [0, 1],
        [4, 1],
      ],
      cross: false,
    },
    {
      what: "in one line, apart",
      one: [
        [0, 0],
        [1, 0],
      ],
      other: [
        [2, 0],
        [3, 0],
      ],
      cross: false,
    },
    {
      what: "crossing only if drawn on",
      one: [
        [0, 0],
        [1, 1],
      ],
      other: [
        [4, 0],
        [3, 1],
      ],
      cross: false,
    },
  ])("$what: $cross", ({ one, other, cross }) => {
    expect(segmentsCross(one, other)).toBe(cross);
    expect(segmentsCross(other, one)).toBe(cross);
    expect(segmentsCross([one[1], one[0]], other)).toBe(cross);
  });
});

describe("distanceToSegment", () => {
  it.each<{ what: string; p: Vector2; segment: Segment; gap: number }>([
    {
      what: "beside it",
      p: [2, 3],
      segment: [
        [0, 0],
        [4, 0],
      ],
      gap: 3,
    },
    {
      what: "past its end",
      p: [7, 4],
      segment: [
        [0, 0],
        [4, 0],
      ],
      gap: 5,
    },
    {
      what: "on it",
      p: [1, 0],
      segment: [
        [0, 0],
        [4, 0],
      ],
      gap: 0,
    },
    {
      what: "of no length",
      p: [3, 4],
      segment: [
        [0, 0],
        [0, 0],
      ],
      gap: 5,
    },
  ])("$what", ({ p, segment, gap }) => {
    expect(distanceToSegment(p, segment)).toBeCloseTo(gap, 12);
  });
});

describe("isJunction", () => {
  const wall: Segment = [
    [0, 0],
    [4, 0],
  ];
  it.each<{ what: string; other: Segment; junction: boolean }>([
    {
      what: "butted against its middle",
      other: [
        [2, 0],
        [2, 3],
      ],
      junction: true,
    },
    {
      what: "through its middle",
      other: [
        [2, -1],
        [2, 3],
      ],
      junction: false,
    },
    {
      what: "from its end",
      other: [
        [4, 0],
        [4, 3],
      ],
      junction: false,
    },
    {
      what: "over it",
      other: [
        [2, 0],
        [6, 0],
      ],
      junction: false,
    },
    {
      what: "clear of it",
      other: [
        [2, 1],
        [2, 3],
      ],
      junction: false,
    },
  ])("a wall $what: $junction", ({ other, junction }) => {
    expect(isJunction(wall, other)).toBe(junction);
    expect(isJunction(other, wall)).toBe(junction);
  });
});
