import { describe, expect, it } from "vitest";
import type { Place } from "@/lib/classroom/live/cloud";
import { judgeGuesses } from "@/lib/classroom/live/judge-guesses";
import { voteResult } from "@/lib/classroom/live/vote-result";
import type { Exercise } from "@/lib/exercise/exercise";
import { exercisePoints } from "@/lib/exercise/exercise-points";
import { gradeMarks } from "@/lib/grading/grade-marks";
import { liveExercise, planDepthMark } from "./live-exercise";

const exercise = liveExercise();
const POINT = "B.foot";
const truth = exercisePoints(exercise).get(POINT)?.picture as Place;

describe("guesses held against the truth", () => {
  it("finds the true point within, and measures like the grading", () => {
    const off: Place = [truth[0] + 0.05, truth[1] + 0.02];
    const judged = judgeGuesses(exercise, POINT, [truth, off]);
    const graded = gradeMarks(exercise, {
      format: "plasterline.marks/1",
      exercise: exercise.id,
      marks: [{ point: POINT, at: off }],
    }).marks[0];
    expect(judged?.truth).toEqual(truth);
    expect(judged?.guesses[0]).toMatchObject({ offMm: 0, within: true, habits: [] });
    expect(judged?.guesses[1]?.offMm).toBeCloseTo(graded?.offMm ?? Number.NaN, 9);
    expect(judged?.toleranceMm).toBeCloseTo(graded?.toleranceMm ?? Number.NaN, 9);
  });

  it("names the wrong idea that a mark suggests, and none for a mark that suggests none", () => {
    // The depth drawn in the plan's proportion: the mark as far up between the plaster line's foot and the back wall's as the
    // plan has the point between plaster line and back wall; worked out beside, from the format's worked example.
    const judged = judgeGuesses(exercise, POINT, [planDepthMark(exercise, POINT), [truth[0] - 1.1, truth[1] + 2.3]]);
    expect(judged?.guesses[0]?.habits).toEqual(["Depth in plan proportion"]);
    expect(judged?.guesses[1]?.habits).toEqual([]);
  });

  it("says nothing of a point that is not asked", () => {
    expect(judgeGuesses(exercise, "nowhere", [])).toBeNull();
  });

  it("reads a plan mark by where the picture shows it", () => {
    const reading: Exercise = { ...exercise, task: { ...exercise.task, kind: "picture-to-plan" } };
    const [x = 0, y = 0] = exercisePoints(exercise).get(POINT)?.at ?? [];
    const judged = judgeGuesses(reading, POINT, [
      [x, y],
      [x, y + 4],
      // Behind the eye a mark means no place.
      [x, -100],
    ]);
    expect(judged?.truth).toEqual([x, y]);
    expect(judged?.guesses.map(({ within }) => within)).toEqual([true, false, false]);
    expect(judged?.guesses[2]?.offMm).toBeNull();
  });
});

describe("what a room is shown", () => {
  const wrong = planDepthMark(exercise, POINT);
  const guesses = [
    { round: 1, at: truth },
    { round: 1, at: wrong },
    { round: 1, at: wrong },
    { round: 2, at: truth },
    { round: 2, at: truth },
    { round: 2, at: wrong },
  ];

  it("is nothing of an open round", () => {
    expect(voteResult(exercise, POINT, { round: 1, state: "open" }, guesses)).toMatchObject({
      truth: null,
      rounds: [],
    });
    const second = voteResult(exercise, POINT, { round: 2, state: "open" }, guesses);
    expect(second?.truth).toBeNull();
    expect(second?.rounds.map(({ round, within }) => [round, within])).toEqual([[1, 1]]);
  });

  it("is the marks, and how many are right, before the true point", () => {
    const shown = voteResult(exercise, POINT, { round: 1, state: "revealed" }, guesses);
    expect(shown).toMatchObject({ truth: null, rounds: [{ round: 1, within: 1, advice: "explain", habits: [] }] });
    expect(shown?.rounds[0]?.marks).toHaveLength(3);
    // The whole answer as a page gets it has nothing of the truth but the mark of whoever found it.
    expect(JSON.stringify({ ...shown, rounds: [] })).not.toContain(String(truth[0]));
  });

  it("is both rounds and what went wrong with the true point", () => {
    const told = voteResult(exercise, POINT, { round: 2, state: "closed" }, guesses);
    expect(told?.truth).toEqual(truth);
    expect(told?.rounds.map(({ within, advice }) => [within, advice])).toEqual([
      [1, "explain"],
      [2, "again"],
    ]);
    expect(told?.rounds[0]?.habits).toEqual([{ name: "Depth in plan proportion", count: 2 }]);
    expect(told?.rounds[1]?.habits).toEqual([{ name: "Depth in plan proportion", count: 1 }]);
  });
});
