import { describe, expect, it } from "vitest";
import { type HabitHistory, habitHistory } from "@/lib/progress/habit-history";
import type { AttemptRecord } from "@/lib/progress/record";
import { aMark, aRecord, day } from "./records";

const CLAIM = { odds: 40, marks: ["A.foot"], amount: null };

/** Attempts a day apart, in signs: `x` claims plan-depth, `-` could show it and did not, `.` cannot show it. */
function attempts(signs: string): readonly AttemptRecord[] {
  return [...signs].map((sign, i) =>
    aRecord("points", day(i), [aMark()], {
      habits: sign === "x" ? [{ id: "plan-depth", ...CLAIM }] : [],
      tells: sign === "." ? [] : ["plan-depth"],
    }),
  );
}

function history(signs: string): HabitHistory {
  return habitHistory(attempts(signs), new Date(day(signs.length + 8)))[0] as HabitHistory;
}

describe("habitHistory", () => {
  it("has nothing to say before a habit was claimed", () => {
    expect(habitHistory(attempts("--.-"), new Date(day(9)))).toEqual([]);
  });

  const cases: readonly (readonly [string, Partial<HabitHistory>])[] = [
    ["x", { state: "here", claimed: 1, of: 1, without: 0, firstSeen: day(0), lastSeen: day(0), goneSince: null }],
    ["-x-xx", { state: "here", claimed: 3, of: 5, firstSeen: day(1), lastSeen: day(4) }],
    ["xxxxxx-", { state: "fading", claimed: 4, of: 5, without: 1, goneSince: null }],
    ["x--", { state: "fading", without: 2, goneSince: null }],
    ["x---", { state: "gone", claimed: 1, of: 4, without: 3, goneSince: day(1), lastSeen: day(0) }],
    ["xx.-..--", { state: "gone", claimed: 2, of: 5, without: 3, goneSince: day(3), lastSeen: day(1) }],
    ["x...", { state: "here", claimed: 1, of: 1, without: 0 }],
    ["x---x", { state: "here", firstSeen: day(0), lastSeen: day(4), goneSince: null }],
  ];
  it.each(cases)("of %s", (signs, expected) => {
    expect(history(signs)).toMatchObject(expected);
  });

  it.each([
    ["x", "Depth in plan proportion: in the one exercise that could show it, last nine days ago."],
    ["-x-xx", "Depth in plan proportion: in three of the last five that could show it, last nine days ago."],
    ["xx-", "Depth in plan proportion: in two of the last three that could show it, but not in the last."],
    ["xx--", "Depth in plan proportion: in two of the last four that could show it, but not in the last two."],
    ["x---", "Depth in plan proportion: gone for 11 days, and not once in three exercises that could show it."],
  ])("says of %s", (signs, words) => {
    expect(history(signs).words.replace("eleven", "11")).toBe(words);
  });

  it("numbers attempts as the error series do, and counts those of which it is not known what they tell", () => {
    const records = [...attempts("x."), aRecord("old", day(3)), aRecord("points", day(4), [aMark()], { tells: null })];
    expect(habitHistory(records, new Date(day(9)))[0]?.points).toEqual([
      { x: 1, when: day(0), claimed: true },
      { x: 3, when: day(4), claimed: false },
    ]);
  });

  it("puts those still here first, then the last seen", () => {
    const claims = ["too-deep", "full-width", "plan-depth", "full-width"].map((id, i) =>
      aRecord("points", day(i), [aMark()], { habits: [{ id, ...CLAIM }], tells: ["too-deep"] }),
    );
    expect(habitHistory(claims, new Date(day(9))).map(({ id, state }) => [id, state])).toEqual([
      ["full-width", "here"],
      ["plan-depth", "here"],
      ["too-deep", "gone"],
    ]);
  });
});
