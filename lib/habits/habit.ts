import type { PicturePoint, PlanPoint } from "../stage/frame";
import type { Asked } from "./asked";

/** One place a habit may put a mark. Places of one `variant` go together over a set. */
export type Prediction = { readonly variant: string; readonly at: PicturePoint };

/** The same on the plan, for reading back out of the picture. */
export type PlanPrediction = { readonly variant: string; readonly at: PlanPoint };

/** A consistent wrong idea with a computable signature. */
export type Habit = {
  readonly id: string;
  /** A short plain name, for lists and charts. */
  readonly name: string;
  /** Whether the habit has anything to say at this point. */
  applies(asked: Asked): boolean;
  /** Where a student who holds it puts the mark. Empty where it comes to nothing. */
  predict(asked: Asked): readonly Prediction[];
  /** Where such a student reads the point back on to the plan; absent where the idea has no reverse. */
  predictPlan?(asked: Asked): readonly PlanPrediction[];
  /** The idea and the fact it misses, in words for the student. */
  say(asked: Asked, amount: number | null): string;
};

/** A habit that errs by an amount, fitted over the set. */
export type FittedHabit = Omit<Habit, "predict" | "predictPlan"> & {
  /** The amounts tried. */
  readonly amounts: readonly number[];
  predictWith(asked: Asked, amount: number): readonly Prediction[];
  predictPlanWith(asked: Asked, amount: number): readonly PlanPrediction[];
};
