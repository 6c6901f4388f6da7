import type { Exercise } from "../exercise/exercise";
import type { ProjectedPoint } from "../exercise/exercise-points";
import { type Asked, askedPoints, type Observation } from "./asked";
import type { HabitClaim, MarkHabit } from "./claim";
import { type Field, startField } from "./field";
import { cannotBeTold, type Hypothesis, hypotheses, MARKS_NEEDED } from "./hypothesis";
import { logLikelihood } from "./likelihood";
import { questionAt } from "./question";

/** Odds a habit needs against there being none, and against the next habit. */
export const ODDS_AGAINST_NONE = 20;
export const ODDS_AGAINST_NEXT = 3;

/** Habits that may be claimed together. */
const MOST_HABITS = 3;

export const ODDS_CAP = 1e6;

export type Classification = {
  /** Strongest first. */
  readonly claims: readonly HabitClaim[];
  /** For each observation the habits that explain it: none, one, or several that cannot be told apart. */
  readonly marks: readonly (readonly MarkHabit[])[];
  readonly asked: readonly Asked[];
};

type Member = { readonly hypothesis: Hypothesis; readonly gain: number; readonly ties: readonly Hypothesis[] };

/** Which wrong ideas explain a set of marks, by the likelihood of each over all of them. */
export function classify(
  exercise: Exercise,
  points: ReadonlyMap<string, ProjectedPoint>,
  observations: readonly Observation[],
  scaleRatio: number,
): Classification {
  const asked = askedPoints(exercise, points, observations);
  if (observations.length === 0) return { claims: [], marks: [], asked };
  const field = startField(exercise, observations, hypotheses(asked, observations, scaleRatio), scaleRatio);
  const members = confirm(field, select(field));
  const claims = members
    .flatMap(({ hypothesis, gain, ties }) => [hypothesis, ...ties].map((one) => claimOf(field, one, gain)))
    .sort((a, b) => b.odds - a.odds);
  const marks = observations.map((_, i) => {
    const held = explaining(field, members, i);
    return held.length > 0 ? held : questionAt(field, i);
  });
  return { claims, marks, asked };
}

/** Log-likelihood of the marks when these habits are held together; a mark that several of them explain may follow any. */
function likelihoodOf({ trueMm, paper }: Field, held: readonly Hypothesis[]): number {
  const places = trueMm.map((off, i) => {
    const predicted = held.flatMap(({ offMm }) => offMm[i] ?? []);
    return predicted.length > 0 ? predicted : [off];
  });
  const freedom = held.reduce((sum, { ways }) => sum + Math.log(ways), 0);
  return logLikelihood(places, paper) - freedom;
}

/** The ways of holding each habit that are still open, best way of each given what is held already. */
function bestWays(field: Field, held: readonly Hypothesis[]): readonly { hypothesis: Hypothesis; value: number }[] {
  const best = new Map<string, { hypothesis: Hypothesis; value: number }>();
  for (const hypothesis of field.all) {
    if (held.some(({ id }) => id === hypothesis.id)) continue;
    const value = likelihoodOf(field, [...held, hypothesis]);
    const known = best.get(hypothesis.id);
    if (!known || value > known.value) best.set(hypothesis.id, { hypothesis, value });
  }
  return [...best.values()].sort((a, b) => b.value - a.value);
}

/** Adds habits one at a time while each makes the marks more likely by the odds a claim needs. */
function select(field: Field): readonly Hypothesis[] {
  let held: readonly Hypothesis[] = [];
  let value = likelihoodOf(field, held);
  while (held.length < MOST_HABITS) {
    const next = bestWays(field, held).find(({ hypothesis }) => marksNearer(field, hypothesis).length >= MARKS_NEEDED);
    if (!next || next.value - value < Math.log(ODDS_AGAINST_NONE)) break;
    held = [...held, next.hypothesis];
    value = next.value;
  }
  return held;
}

/** Keeps the habits that the marks need, and that no other habit could stand in for; those that cannot be told apart are ties. */
function confirm(field: Field, held: readonly Hypothesis[]): readonly Member[] {
  const whole = likelihoodOf(field, held);
  return held.flatMap((hypothesis) => {
    const others = held.filter((other) => other !== hypothesis);
    const gain = whole - likelihoodOf(field, others);
    if (gain < Math.log(ODDS_AGAINST_NONE)) return [];
    const rivals = bestWays(field, others).filter(
      (rival) => rival.hypothesis.id !== hypothesis.id && whole - rival.value < Math.log(ODDS_AGAINST_NEXT),
    );
    const ties = rivals
      .map((rival) => rival.hypothesis)
      .filter((rival) => cannotBeTold(hypothesis, rival, field.observations, field.scaleRatio));
    return ties.length === rivals.length ? [{ hypothesis, gain, ties }] : [];
  });
}

/** The marks that lie nearer to a habit's place than to the true one. */
function marksNearer({ trueMm }: Field, { offMm }: Hypothesis): readonly number[] {
  return offMm.flatMap((off, i) => (off !== null && off < (trueMm[i] as number) ? [i] : []));
}

function claimOf(field: Field, hypothesis: Hypothesis, gain: number): HabitClaim {
  return {
    id: hypothesis.id,
    odds: Math.min(Math.exp(gain), ODDS_CAP),
    marks: marksNearer(field, hypothesis).map((i) => (field.observations[i] as Observation).point.name),
    amount: hypothesis.amount,
  };
}

/** The claimed habits that explain one mark: the nearest of them, with those that cannot be told from it. */
function explaining(field: Field, members: readonly Member[], i: number): readonly MarkHabit[] {
  const near = members
    .filter(({ hypothesis }) => marksNearer(field, hypothesis).includes(i))
    .sort((a, b) => (a.hypothesis.offMm[i] as number) - (b.hypothesis.offMm[i] as number))[0];
  if (!near) return [];
  return [near.hypothesis, ...near.ties].flatMap(({ id, amount, places }) => {
    const place = places[i];
    return place ? [{ id, amount, place, question: false }] : [];
  });
}
