import type { LengthUnits } from "../measure/length";
import { FOOT_M } from "../measure/length";

/** Spacing of the graded marks of the rule along the plaster line, metres: every foot, or every half metre. */
export const RULE_STEP_M: Readonly<Record<LengthUnits, number>> = { "ft-in": FOOT_M, m: 0.5 };

/** Room for rounding when the opening ends on a tick. */
const TICK_SLACK_M = 1e-9;

/** Places of the ticks of the plaster line's true-size rule, metres from the centre line, left to right, within the opening. */
export function ruleTicks(openingWidth: number, units: LengthUnits): readonly number[] {
  const step = RULE_STEP_M[units];
  const each = Math.floor((openingWidth / 2 + TICK_SLACK_M) / step);
  if (!(each >= 0)) return [];
  return Array.from({ length: 2 * each + 1 }, (_, i) => (i - each) * step);
}
