import { describe, expect, it } from "vitest";
import { cloudRoom } from "@/app/class/[classId]/live/[voteId]/cloud-room";
import type { Place } from "@/lib/classroom/live/cloud";
import { cloudOf } from "@/lib/classroom/live/cloud";
import type { RoundResult, VoteResult } from "@/lib/classroom/live/vote-result";

const RATIO = 48;
const round = (number: number, marks: readonly Place[]): RoundResult => ({
  round: number,
  marks,
  cloud: cloudOf(marks),
  within: 0,
  advice: "go-on" as RoundResult["advice"],
  habits: [],
});
const result = (rounds: readonly (readonly Place[])[], truth: Place | null = null, toleranceMm = 1): VoteResult => ({
  stage: { state: truth ? "closed" : "revealed", round: rounds.length } as VoteResult["stage"],
  truth,
  toleranceMm,
  rounds: rounds.map((marks, i) => round(i + 1, marks)),
});
const NINE: readonly Place[] = Array.from(
  { length: 9 },
  (_, i): Place => [1 + 0.1 * Math.cos(i), 2 + 0.1 * Math.sin(i)],
);

describe("the part of the drawing where the marks are", () => {
  it.each<[string, VoteResult, readonly [number, number] | null, number]>([
    ["no mark yet", result([[]]), null, 0],
    ["no round yet", result([]), null, 0],
    ["one mark: as much as three tolerances", result([[[1, 2]]]), [1, 2], 0.144],
    [
      "two marks: from the middle to either",
      result([
        [
          [0, 0],
          [2, 0],
        ],
      ]),
      [1, 0],
      1,
    ],
    ["the true point is in it", result([[[1, 2]]], [1, 5]), [1, 2], 3],
    ["only the last two rounds are drawn", result([[[9, 9]], [[0, 0]], [[2, 0]]]), [1, 0], 1],
  ])("%s", (_, given, centre, radius) => {
    const room = cloudRoom(given, RATIO);
    if (centre === null) return expect(room).toBeNull();
    expect(room?.centre).toEqual(centre);
    expect(room?.radius).toBeCloseTo(radius, 12);
  });

  it("is not made large by one mark far off from nine", () => {
    const room = cloudRoom(result([[...NINE, [40, 40]]]), RATIO);
    expect(room?.radius).toBeLessThan(0.3);
  });
});
