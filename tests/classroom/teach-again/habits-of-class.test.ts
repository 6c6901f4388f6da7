import { describe, expect, it } from "vitest";
import { type HabitAttempt, habitsOfClass } from "@/lib/classroom/teach-again/habits-of-class";

function attempt(
  memberId: string,
  day: number,
  habits: readonly string[],
  change: Partial<HabitAttempt> = {},
): HabitAttempt {
  const receivedAt = `2026-11-${String(day).padStart(2, "0")}T10:00:00.000Z`;
  return {
    memberId,
    exercise: "tide-office",
    inCourse: true,
    receivedAt,
    feedbackAt: receivedAt,
    habits,
    tells: () => ["plan-depth", "flat-floor"],
    ...change,
  };
}

const states = (attempts: readonly HabitAttempt[]) =>
  habitsOfClass(attempts).map(({ id, counts }) => [id, counts.still, counts.gone, counts.untried]);

describe("the habits of a class", () => {
  it.each([
    ["one attempt", [attempt("wim", 1, ["plan-depth"])], [["plan-depth", 0, 0, 1]]],
    ["gone at the next", [attempt("wim", 1, ["plan-depth"]), attempt("wim", 2, [])], [["plan-depth", 0, 1, 0]]],
    ["held on to", [attempt("wim", 1, ["plan-depth"]), attempt("wim", 2, ["plan-depth"])], [["plan-depth", 1, 0, 0]]],
    [
      "come back",
      [attempt("wim", 1, ["plan-depth"]), attempt("wim", 2, []), attempt("wim", 3, ["plan-depth"])],
      [["plan-depth", 1, 0, 0]],
    ],
    [
      "later exercises that cannot show it say nothing",
      [attempt("wim", 1, ["plan-depth"]), attempt("wim", 2, [], { tells: () => [] })],
      [["plan-depth", 0, 0, 1]],
    ],
    [
      "another one's attempt says nothing",
      [attempt("wim", 1, ["plan-depth"]), attempt("tess", 2, [])],
      [["plan-depth", 0, 0, 1]],
    ],
    [
      "drawn before the correction was seen",
      [attempt("wim", 1, ["plan-depth"], { feedbackAt: "2026-11-05T00:00:00.000Z" }), attempt("wim", 2, [])],
      [["plan-depth", 0, 0, 1]],
    ],
    [
      "never corrected",
      [attempt("wim", 1, ["plan-depth"], { feedbackAt: null }), attempt("wim", 2, [])],
      [["plan-depth", 0, 0, 1]],
    ],
    ["none", [attempt("wim", 1, [])], []],
  ] satisfies readonly [string, readonly HabitAttempt[], unknown[]][])("%s", (_, attempts, expected) => {
    expect(states(attempts)).toEqual(expected);
    expect(states([...attempts].reverse())).toEqual(expected);
  });

  it("puts the commonest first and names the exercise that shows it most", () => {
    const [first, second] = habitsOfClass([
      attempt("wim", 1, ["flat-floor"]),
      attempt("wim", 2, ["plan-depth"], { exercise: "net-loft" }),
      attempt("tess", 1, ["plan-depth"], { exercise: "net-loft" }),
      attempt("noor", 1, ["plan-depth"]),
      attempt("noor", 2, ["plan-depth"], { exercise: "own", inCourse: false }),
    ]);
    expect(first).toMatchObject({ id: "plan-depth", exercise: "net-loft" });
    expect(first?.holders.map(({ memberId }) => memberId).sort()).toEqual(["noor", "tess", "wim"]);
    expect(second).toMatchObject({ id: "flat-floor", exercise: "tide-office" });
  });
});
