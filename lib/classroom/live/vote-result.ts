import type { Exercise } from "../../exercise/exercise";
import { inside } from "../../plan/first-letter";
import { type Cloud, cloudOf, type Place } from "./cloud";
import { type JudgedGuess, judgeGuesses } from "./judge-guesses";
import { type Advice, adviseOn, type VoteStage } from "./vote-stage";

/** The marks of one round, as a room is shown them. */
export type RoundResult = {
  readonly round: number;
  readonly marks: readonly Place[];
  readonly cloud: Cloud;
  /** How many marks are within the tolerance. */
  readonly within: number;
  readonly advice: Advice;
  /** Wrong ideas that marks suggest, the commonest first, with how many suggest each; empty until the truth is shown. */
  readonly habits: readonly { readonly name: string; readonly count: number }[];
};

export type VoteResult = {
  readonly stage: VoteStage;
  /** Null until the truth is shown. */
  readonly truth: Place | null;
  readonly toleranceMm: number;
  readonly rounds: readonly RoundResult[];
};

export type Guess = { readonly round: number; readonly at: Place };

/**
 * What a vote has come to, as much of it as its stage lets be seen: of an open round nothing, of a round whose cloud is shown
 * the marks and how many are right, and only of a closed one the true point and what went wrong. Null where the exercise does
 * not ask the point.
 */
export function voteResult(
  exercise: Exercise,
  point: string,
  stage: VoteStage,
  guesses: readonly Guess[],
): VoteResult | null {
  const told = stage.state === "closed";
  const shown = stage.state === "open" ? stage.round - 1 : stage.round;
  const seen = guesses.filter(({ round }) => round <= shown);
  const judged = judgeGuesses(
    exercise,
    point,
    seen.map(({ at }) => at),
  );
  if (!judged) return null;
  const rounds = Array.from({ length: shown }, (_, i) => i + 1).map((round) =>
    roundResult(
      round,
      judged.guesses.filter((_, i) => seen[i]?.round === round),
      told,
    ),
  );
  return { stage, truth: told ? judged.truth : null, toleranceMm: judged.toleranceMm, rounds };
}

function roundResult(round: number, guesses: readonly JudgedGuess[], told: boolean): RoundResult {
  const marks = guesses.map(({ at }) => at);
  const within = guesses.filter((guess) => guess.within).length;
  return {
    round,
    marks,
    cloud: cloudOf(marks),
    within,
    advice: adviseOn(marks.length === 0 ? 0 : within / marks.length),
    habits: told ? countHabits(guesses) : [],
  };
}

/** Ideas that cannot be told apart at this point are counted as one, under all their names. */
function countHabits(guesses: readonly JudgedGuess[]): RoundResult["habits"] {
  const counts = new Map<string, number>();
  for (const { habits } of guesses) {
    if (habits.length === 0) continue;
    const name = [...habits]
      .sort()
      .map((each, i) => (i === 0 ? each : inside(each)))
      .join(", or ");
    counts.set(name, (counts.get(name) ?? 0) + 1);
  }
  return [...counts].map(([name, count]) => ({ name, count })).sort((a, b) => b.count - a.count);
}
