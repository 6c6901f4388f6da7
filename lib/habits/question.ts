import { distance } from "../geometry/vector";
import { toPaperMm } from "../measure/scale";
import type { MarkHabit } from "./claim";
import type { Field } from "./field";
import { SAYS_NOTHING } from "./hypothesis";
import { logLikelihood } from "./likelihood";

/** Odds from which a likely habit may be put as a question at a single mark, and those it needs against the next one. */
export const QUESTION_ODDS = 10;
const QUESTION_ODDS_AGAINST_NEXT = 3;

/**
 * The habit that a single mark by itself suggests, as a question: none for a mark within tolerance, and none of those
 * with an amount to fit, which would explain any mark.
 */
export function questionAt({ observations, trueMm, all, paper, scaleRatio }: Field, i: number): readonly MarkHabit[] {
  const observation = observations[i];
  const off = trueMm[i];
  if (!observation || off === undefined || off <= observation.toleranceMm) return [];
  const none = logLikelihood([[off]], paper);
  const likely = all
    .flatMap((hypothesis) => {
      const place = hypothesis.places[i];
      const offMm = hypothesis.offMm[i];
      if (!place || offMm === null || offMm === undefined || hypothesis.amount !== null) return [];
      return [{ id: hypothesis.id, place, gain: logLikelihood([[offMm]], paper) - none }];
    })
    .sort((a, b) => b.gain - a.gain);
  const [best] = likely;
  if (!best || best.gain < Math.log(QUESTION_ODDS)) return [];
  const near = likely.filter(({ gain }) => best.gain - gain < Math.log(QUESTION_ODDS_AGAINST_NEXT));
  const one = near.every(
    ({ place }) => toPaperMm(distance(place, best.place), scaleRatio) < SAYS_NOTHING * observation.toleranceMm,
  );
  if (!one) return [];
  const ids = near.map(({ id }) => id);
  return near
    .filter(({ id }, j) => ids.indexOf(id) === j)
    .map(({ id, place }) => ({ id, place, amount: null, question: true }));
}
