import { describe, expect, it } from "vitest";
import { skillCurve } from "@/lib/progress/skill-curve";
import { type SkillState, skillStates } from "@/lib/progress/skill-states";
import { SKILLS } from "@/lib/progress/skills";
import { summarise } from "@/lib/progress/summarise";
import { aRecord, day, marksFor } from "./records";

/** The state of depth by eye after marks on certain days, in signs. */
function depthAfter(...attempts: readonly (readonly [dayNumber: number, signs: string])[]): SkillState {
  const records = attempts.map(([n, signs]) => aRecord("points", day(n), marksFor("depth-by-eye", signs)));
  return skillStates(records).find(({ skill }) => skill.id === "depth-by-eye") as SkillState;
}

describe("skillStates", () => {
  it("begins with nothing begun", () => {
    const states = skillStates([]);
    expect(states.map(({ skill }) => skill.id)).toEqual(SKILLS.map(({ id }) => id));
    expect(new Set(states.map(({ state }) => state))).toEqual(new Set(["not begun"]));
  });

  it("traces marks through several exercises, hints proving nothing", () => {
    // .919 after two right (by hand, see the tracing).
    expect(depthAfter([0, "+"], [1, "+"]).probability).toBeCloseTo(0.919, 3);
    expect(depthAfter([0, "+"], [1, "o+"]).probability).toBeCloseTo(0.919, 3);
    expect(depthAfter([0, "+"], [1, "++"])).toMatchObject({ state: "mastered", masteredOn: day(1) });
    expect(depthAfter([0, "o".repeat(60)]).state).toBe("shaky");
  });

  it("looks at mastery when the exercise is finished, not within it", () => {
    // .983 on the way and .889 at the end (by hand, see the tracing).
    expect(depthAfter([0, "+++d"])).toMatchObject({ state: "shaky", slipped: false, dueAt: null });
  });

  // Days after which it comes back: 1, 3, 7, 16, 35; counted from the day it was last practised.
  const cases: readonly (readonly [string, readonly (readonly [number, string])[], number | null])[] = [
    ["mastered on day 0", [[0, "+++"]], 1],
    [
      "kept on day 1",
      [
        [0, "+++"],
        [1, "+"],
      ],
      4,
    ],
    [
      "kept late, on day 3",
      [
        [0, "+++"],
        [3, "+"],
      ],
      6,
    ],
    [
      "kept on days 1 and 4",
      [
        [0, "+++"],
        [1, "+"],
        [4, "+"],
      ],
      11,
    ],
    [
      "kept on days 1, 4 and 11",
      [
        [0, "+++"],
        [1, "+"],
        [4, "+"],
        [11, "+"],
      ],
      27,
    ],
    [
      "kept on days 1, 4, 11 and 27",
      [
        [0, "+++"],
        [1, "+"],
        [4, "+"],
        [11, "+"],
        [27, "+"],
      ],
      62,
    ],
    [
      "and on day 62, the longest again",
      [
        [0, "+++"],
        [1, "+"],
        [4, "+"],
        [11, "+"],
        [27, "+"],
        [62, "+"],
      ],
      97,
    ],
    [
      "practised early, on day 2 of 1 to 4: the same wait again",
      [
        [0, "+++"],
        [1, "+"],
        [2, "+"],
      ],
      5,
    ],
    [
      "lost on day 1",
      [
        [0, "+++"],
        [1, "d"],
      ],
      null,
    ],
    [
      "lost and mastered anew on day 2",
      [
        [0, "+++"],
        [1, "d"],
        [2, "+++"],
      ],
      3,
    ],
  ];
  it.each(cases)("comes back in time: %s", (_name, attempts, due) => {
    expect(depthAfter(...attempts).dueAt).toBe(due === null ? null : Date.parse(day(due)));
  });

  it("remembers that a skill has slipped, and when one was kept", () => {
    expect(depthAfter([0, "+++"], [1, "d"])).toMatchObject({ state: "shaky", slipped: true });
    expect(depthAfter([0, "+++"], [1, "d"], [2, "+++"])).toMatchObject({ state: "mastered", slipped: false });
    expect(depthAfter([0, "+++"], [1, "+"]).keptOn).toBe(day(1));
    expect(depthAfter([0, "+++"], [0, "+"]).keptOn).toBeNull();
  });

  it("puts a teacher's own skills after those of the course", () => {
    const states = skillStates([aRecord("points", day(0), marksFor("spike-marks", "+"))]);
    expect(states.at(-1)?.skill.name).toBe("Spike marks");
  });
});

describe("skillCurve", () => {
  it("gives each mark with the probability after it", () => {
    const curve = skillCurve(depthAfter([0, "+d"], [1, "o"]));
    expect(curve).toMatchObject({ title: "Depth by eye", masteredAt: 0.95 });
    expect(curve.points.map(({ x, kind, when }) => [x, kind, when])).toEqual([
      [1, "right", day(0)],
      [2, "wrong", day(0)],
      [3, "shown", day(1)],
    ]);
    // By hand, see the tracing.
    expect(curve.points.map(({ y }) => y.toFixed(2))).toEqual(["0.69", "0.30", "0.30"]);
  });
});

describe("summarise", () => {
  const records = [
    aRecord("points", day(0), [...marksFor("depth-by-eye", "+++"), ...marksFor("height", "+d")]),
    aRecord("points", day(2), [...marksFor("ray-to-cvp", "+++"), ...marksFor("true-size", "d")]),
  ];

  it("lists what is mastered, shaky and not begun, the most pressing first", () => {
    const { mastered, shaky, notBegun, words } = summarise(records, new Date(day(2, 6)));
    expect(mastered.map(({ id, dueInDays }) => [id, dueInDays])).toEqual([
      ["depth-by-eye", 0],
      ["ray-to-cvp", 1],
    ]);
    expect(mastered.map((each) => each.words)).toEqual([
      "Mastered two days ago; it is due for another.",
      "Mastered today; it comes back in less than a day.",
    ]);
    expect(shaky.map(({ id, marks, right }) => [id, marks, right])).toEqual([
      ["true-size", 1, 0],
      ["height", 2, 1],
    ]);
    expect(notBegun).toHaveLength(SKILLS.length - 4);
    expect(notBegun[0]).toMatchObject({ id: "diagonals", words: "Not begun yet.", marks: 0 });
    expect(words).toBe("2 skills mastered, 2 shaky, 12 not begun.");
  });
});
