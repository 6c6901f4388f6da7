import { describe, expect, it, vi } from "vitest";
import { HABITS } from "@/lib/habits/all-habits";
import { HAND_SHARE } from "@/lib/habits/reveal";
import { seeded } from "../seeded";
import { startDice } from "./student";
import { longExercises, mean, sharesRight, tryStudents } from "./trials";

/** A hand of 3 mm on a sheet 20 inches wide. */
const HAND = HAND_SHARE;

/** The bars, over many students; a small sample may fall under one by chance, so some slack is left it. */
const MEAN_RIGHT = 0.97;
const WORST_RIGHT = 0.9;
const FALSE_CLAIMS = 0.01;
const BOTH_NAMED = 0.8;

/** Students of each kind in each exercise: few when nothing is said, more as SEEDS asks. */
const each = Math.max(1, Math.round(seeded.numRuns / 50));
const slack = 0.02 + 0.08 / Math.sqrt(each);

vi.setConfig({ testTimeout: 60_000 + 1_000 * seeded.numRuns });

const shown = await longExercises();
const trial = tryStudents(shown, HAND, { none: 2 * each, one: each, two: 1 }, startDice(1435));
const shares = sharesRight(trial.confusion);

describe("over the course's exercises of six marks or more, with a hand of 0.6 % of the opening's width", () => {
  it("every habit can be shown somewhere", () => {
    expect([...shares.keys()].sort()).toEqual(HABITS.map(({ id }) => id).sort());
  });

  it("97 in 100 habits are named right on average", () => {
    expect(mean([...shares.values()])).toBeGreaterThanOrEqual(MEAN_RIGHT - slack / 4);
  });

  it("90 in 100 of the worst habit are", () => {
    for (const [id, share] of shares) expect([id, share >= WORST_RIGHT - slack]).toEqual([id, true]);
  });

  it("one in 100 students without a habit is said to have one, at most", () => {
    const { accused, students } = trial.none;
    // what a run of bad luck at the bar itself would give: its mean and three standard deviations
    const most = students * FALSE_CLAIMS + 3 * Math.sqrt(students * FALSE_CLAIMS);
    expect(students).toBeGreaterThanOrEqual(2 * each * shown.length);
    expect(accused).toBeLessThanOrEqual(most);
  });

  it("of two habits at once both are named in 80 of 100", () => {
    expect(trial.two.students).toBeGreaterThan(100);
    expect(trial.two.bothNamed / trial.two.students).toBeGreaterThanOrEqual(BOTH_NAMED);
  });
});
