/** The error, in tolerances, at which a mark's score reaches 0. */
const ZERO_AT_TOLERANCES = 5;

/** Score of a mark: 100 to one tolerance, then straight down to 0 at five. A mark that shows no place scores 0. */
export function scoreMark(offMm: number | null, toleranceMm: number): number {
  if (offMm === null) return 0;
  const over = (offMm / toleranceMm - 1) / (ZERO_AT_TOLERANCES - 1);
  return 100 * Math.min(1, Math.max(0, 1 - over));
}

/** The exercise's score: the mean over the marks asked, a missing one counting 0. */
export function scoreExercise(scores: readonly number[], asked: number): number {
  return scores.reduce((sum, score) => sum + score, 0) / asked;
}

/** What one hint taken before a mark costs of its score. */
export const HINT_COST = 15;

/** The hints that count at one mark: the method in words, then its lines. */
export const MOST_HINTS = 2;

/** A mark's score less its hints, never below 0. */
export function lessHints(score: number, hints: number): number {
  return Math.max(0, score - HINT_COST * Math.min(hints, MOST_HINTS));
}
