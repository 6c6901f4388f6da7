/** With fewer students than these, figures of a class are told to be of a small one: common practice, no source. */
export const SMALL_CLASS = 8;

/** A correlation of fewer pairs than these says nothing: through two points goes a line, always. */
const LEAST_PAIRS = 3;

/** Scores that vary less than this, all alike for every purpose, have no correlation. Of 100, squared. */
const NO_VARIANCE = 1e-9;

export type Discrimination =
  | { readonly kind: "found"; readonly r: number; readonly pairs: number }
  /** `few`: too few students have this and something else; `alike`: one of the two is the same for all. */
  | { readonly kind: "none"; readonly why: "few" | "alike" };

export type ItemFigures = {
  /** Students with a score. */
  readonly n: number;
  /** Mean share of the full score, 0 to 1: the lower, the harder; null without scores. */
  readonly difficulty: number | null;
  readonly discrimination: Discrimination;
};

/**
 * Figures of each exercise in classical test theory. `scores` has a row for each student and a column for each exercise, 0 to
 * 100, null where there is none. Difficulty is the mean share of the score. Discrimination is the corrected item-total
 * correlation (Henrysson, Correction of item-total correlations in item analysis, Psychometrika 28, 1963, 211-218; from
 * memory): Pearson's, between the exercise and the rest without it. Where students have not all drawn the same, the rest is
 * the mean of what each has; of complete scores that comes to the same as their sum.
 */
export function itemAnalysis(scores: readonly (readonly (number | null)[])[]): readonly ItemFigures[] {
  const columns = Math.max(0, ...scores.map((row) => row.length));
  return Array.from({ length: columns }, (_, i) => {
    const own = scores.flatMap((row) => row[i] ?? []);
    const pairs = scores.flatMap((row): [number, number][] => {
      const score = row[i] ?? null;
      const rest = row.flatMap((each, j) => (j === i || each === null ? [] : [each]));
      return score === null || rest.length === 0 ? [] : [[score, mean(rest)]];
    });
    return { n: own.length, difficulty: own.length === 0 ? null : mean(own) / 100, discrimination: correlate(pairs) };
  });
}

function correlate(pairs: readonly (readonly [number, number])[]): Discrimination {
  if (pairs.length < LEAST_PAIRS) return { kind: "none", why: "few" };
  const [meanA, meanB] = [mean(pairs.map(([a]) => a)), mean(pairs.map(([, b]) => b))];
  const sum = (of: (a: number, b: number) => number) =>
    pairs.reduce((total, [a, b]) => total + of(a - meanA, b - meanB), 0);
  const [aa, bb, ab] = [sum((a) => a * a), sum((_, b) => b * b), sum((a, b) => a * b)];
  if (aa < NO_VARIANCE || bb < NO_VARIANCE) return { kind: "none", why: "alike" };
  const r = ab / Math.sqrt(aa * bb);
  return { kind: "found", r: Math.min(1, Math.max(-1, r)), pairs: pairs.length };
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
