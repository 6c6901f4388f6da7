import { FOOT_M, INCH_M, type LengthUnits } from "../../measure/length";
import type { PlanPoint } from "../../stage/frame";

/** The steps a grid may have, coarsest first, metres. */
export const GRID_STEPS: Readonly<Record<LengthUnits, readonly number[]>> = {
  "ft-in": [FOOT_M, 6 * INCH_M, 3 * INCH_M, INCH_M],
  m: [0.5, 0.1, 0.05, 0.01],
};

export type StepDirection = "stage left" | "stage right" | "upstage" | "downstage";

/** A place this near to a grid line, in steps, is on it. */
const ON_LINE = 1e-6;

/**
 * The next place by keys: on to the next grid line in a direction, the other coordinate staying. From between two lines the
 * first step goes to the nearer one ahead. `snapPoint` with no tolerance then tells what stands there.
 */
export function stepPoint([x, y]: PlanPoint, direction: StepDirection, step: number): PlanPoint {
  const up = (value: number) => (Math.floor(value / step + ON_LINE) + 1) * step + 0;
  const down = (value: number) => (Math.ceil(value / step - ON_LINE) - 1) * step + 0;
  switch (direction) {
    case "stage left":
      return [up(x), y];
    case "stage right":
      return [down(x), y];
    case "upstage":
      return [x, up(y)];
    case "downstage":
      return [x, down(y)];
  }
}
