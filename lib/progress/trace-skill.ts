/**
 * Bayesian knowledge tracing: Corbett, A. T., and Anderson, J. R. (1995), "Knowledge tracing: modeling the acquisition of
 * procedural knowledge", User Modeling and User-Adapted Interaction 4, 253-278.
 */

/** Probabilities of one skill. */
export type TraceParameters = {
  /** That it is known before the first mark, L0. */
  readonly known: number;
  /** That it is learnt at a mark, T. */
  readonly learn: number;
  /** That a mark is right though the skill is not known, G. */
  readonly guess: number;
  /** That a mark is wrong though the skill is known, S. */
  readonly slip: number;
};

/** Taken where neither the skill nor the mark says otherwise. */
export const USUAL_TRACE: TraceParameters = { known: 0.3, learn: 0.1, guess: 0.2, slip: 0.1 };

/** A skill is mastered from this probability on (Corbett and Anderson 1995). */
export const MASTERED_AT = 0.95;

/**
 * The bounds of guess and slip. The upper ones are those usual in knowledge tracing (guess 0.3, slip 0.1: Corbett and
 * Anderson 1995, from memory); with them a right mark never speaks against a skill. The lower ones are our own: no mark is
 * taken for surer proof than the usual, so that three right in a row are the fewest that master, four the most; and a wrong one
 * may always be a slip of the hand.
 */
export const LEAST_GUESS = 0.2;
export const MOST_GUESS = 0.3;
export const LEAST_SLIP = 0.02;
export const MOST_SLIP = 0.1;

/** No row of marks makes a skill surer known, or surer unknown, than this: it can always be lost and learnt again. */
export const LEAST_DOUBT = 1e-6;

/** What one mark says of a skill. `shown`: right after a hint, which proves nothing: it is passed over. */
export type Observation = {
  readonly kind: "right" | "wrong" | "shown";
  /** Of this mark; the skill's own when absent. */
  readonly guess?: number;
};

export type SkillTrace = {
  /** That the skill is known now. */
  readonly probability: number;
  /** After each observation. */
  readonly history: readonly number[];
};

/**
 * The probability that a skill is known, after marks in the order they were made. With L before a mark, after it
 * right: L(1-S) / (L(1-S) + (1-L)G); wrong: LS / (LS + (1-L)(1-G)); then L + (1-L)T. Always within (0, 1).
 */
export function traceSkill(
  observations: readonly Observation[],
  parameters: TraceParameters = USUAL_TRACE,
): SkillTrace {
  const slip = within(parameters.slip, LEAST_SLIP, MOST_SLIP);
  const start = doubtful(parameters.known);
  const history: number[] = [];
  for (const { kind, guess } of observations) {
    const before = history.at(-1) ?? start;
    const luck = within(guess ?? parameters.guess, LEAST_GUESS, MOST_GUESS);
    history.push(kind === "shown" ? before : learn(weigh(kind, before, luck, slip), parameters.learn));
  }
  return { probability: history.at(-1) ?? start, history };
}

function weigh(kind: "right" | "wrong", known: number, guess: number, slip: number): number {
  return kind === "right"
    ? (known * (1 - slip)) / (known * (1 - slip) + (1 - known) * guess)
    : (known * slip) / (known * slip + (1 - known) * (1 - guess));
}

function learn(known: number, rate: number): number {
  return doubtful(known + (1 - known) * rate);
}

function doubtful(probability: number): number {
  return within(probability, LEAST_DOUBT, 1 - LEAST_DOUBT);
}

function within(value: number, least: number, most: number): number {
  return Math.min(most, Math.max(least, value));
}
