import { distance } from "../geometry/vector";
import { toPaperMm } from "../measure/scale";
import { project } from "../perspective/project";
import type { PicturePoint, PlanPoint } from "../stage/frame";
import { floorHeight } from "../stage/stage";
import { HABITS } from "./all-habits";
import type { Asked, Observation } from "./asked";
import type { FittedHabit, Habit, PlanPrediction, Prediction } from "./habit";

/** One way of holding a habit: for each mark where it would put it, and how far the mark lies from there, mm of paper. */
export type Hypothesis = {
  readonly id: string;
  readonly amount: number | null;
  /** Which way, of a habit that can be held in several. */
  readonly variant: string;
  /** How many ways of holding this habit were tried: its freedom, which it must pay for. */
  readonly ways: number;
  /** Null where the habit says nothing at a mark. */
  readonly places: readonly (PicturePoint | null)[];
  readonly offMm: readonly (number | null)[];
};

/** A prediction nearer to the truth than this share of the tolerance says nothing at that mark. */
export const SAYS_NOTHING = 0.5;

/** Marks that must lie nearer to a habit's place than to the true one, and so that an exercise must have to reveal it. */
export const MARKS_NEEDED = 2;

/** Whether two habits put every mark in the same place, within what says nothing. */
export function cannotBeTold(
  a: Hypothesis,
  b: Hypothesis,
  marks: readonly Pick<Observation, "target" | "toleranceMm">[],
  scaleRatio: number,
): boolean {
  return marks.every(({ target, toleranceMm }, i) => {
    const apart = toPaperMm(distance(a.places[i] ?? target, b.places[i] ?? target), scaleRatio);
    return apart < SAYS_NOTHING * toleranceMm;
  });
}

/** Every way of holding every habit, over these marks. */
export function hypotheses(
  asked: readonly Asked[],
  observations: readonly Observation[],
  scaleRatio: number,
): readonly Hypothesis[] {
  return HABITS.flatMap((habit) => {
    const ways = waysOf(habit, asked, observations, scaleRatio);
    return ways.map((way) => ({ ...way, ways: ways.length }));
  });
}

function waysOf(
  habit: Habit | FittedHabit,
  asked: readonly Asked[],
  observations: readonly Observation[],
  scaleRatio: number,
): readonly Omit<Hypothesis, "ways">[] {
  const applies = asked.map((one) => habit.applies(one));
  if (!applies.includes(true)) return [];
  const amounts = "amounts" in habit ? habit.amounts : [null];
  return amounts.flatMap((amount) => {
    const predicted = asked.map((one, i) => (applies[i] ? predictionsOf(habit, one, amount) : []));
    const variants = new Set(predicted.flat().map(({ variant }) => variant));
    return [...variants].flatMap((variant) => {
      const places = predicted.map((list, i) => {
        const place = list.find((one) => one.variant === variant)?.at;
        const observation = observations[i];
        if (!place || !observation) return null;
        const fromTruth = toPaperMm(distance(place, observation.target), scaleRatio);
        return fromTruth < SAYS_NOTHING * observation.toleranceMm ? null : place;
      });
      if (places.every((place) => place === null)) return [];
      const offMm = places.map((place, i) =>
        place === null ? null : toPaperMm(distance(place, observations[i]?.mark as PicturePoint), scaleRatio),
      );
      return [{ id: habit.id, amount, variant, places, offMm }];
    });
  });
}

/** A habit's predictions in the picture, for drawing or for reading back. */
export function predictionsOf(habit: Habit | FittedHabit, asked: Asked, amount: number | null): readonly Prediction[] {
  if (asked.exercise.task.kind === "plan-to-picture")
    return "amounts" in habit ? habit.predictWith(asked, amount ?? 1) : habit.predict(asked);
  const read: readonly PlanPrediction[] =
    "amounts" in habit ? habit.predictPlanWith(asked, amount ?? 1) : (habit.predictPlan?.(asked) ?? []);
  return read.flatMap(({ variant, at }) => pictureOf(asked, at).map((place) => ({ variant, at: place })));
}

function pictureOf({ exercise }: Asked, [x, y]: PlanPoint): readonly PicturePoint[] {
  const seen = project(exercise.viewer, [x, y, floorHeight(exercise.stage, y)]);
  return seen.seen ? [seen.at] : [];
}
