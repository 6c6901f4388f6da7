import type { Exercise } from "../exercise/exercise";
import { distance } from "../geometry/vector";
import { toPaperMm } from "../measure/scale";
import type { Observation } from "./asked";
import type { Hypothesis } from "./hypothesis";
import type { Paper } from "./likelihood";

/** A set of marks with everything that might explain them. */
export type Field = {
  readonly observations: readonly Observation[];
  readonly trueMm: readonly number[];
  readonly all: readonly Hypothesis[];
  readonly paper: Paper;
  readonly scaleRatio: number;
};

export function startField(
  exercise: Exercise,
  observations: readonly Observation[],
  all: readonly Hypothesis[],
  scaleRatio: number,
): Field {
  const { width, height } = exercise.stage.opening;
  const mean = observations.reduce((sum, { toleranceMm }) => sum + toleranceMm, 0) / observations.length;
  return {
    observations,
    trueMm: observations.map(({ mark, target }) => toPaperMm(distance(mark, target), scaleRatio)),
    all,
    paper: { handMm: mean / 2, slipDensity: 1 / (toPaperMm(width, scaleRatio) * toPaperMm(height, scaleRatio)) },
    scaleRatio,
  };
}
