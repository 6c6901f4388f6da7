import type { FittedHabit } from "./habit";
import { floorPlace, isFloor, NOTHING_M, only } from "./sight-lines";

/** How many amounts are tried between the least and the most, spaced evenly in ratio. */
const TRIALS = 48;

/** A habit that puts everything on the floor at r times its depth: the true point of (x, r y). */
export function fitDepth(
  id: string,
  name: string,
  least: number,
  most: number,
  say: (percent: number) => string,
): FittedHabit {
  return {
    id,
    name,
    amounts: Array.from({ length: TRIALS + 1 }, (_, i) => least * (most / least) ** (i / TRIALS)),
    applies: (asked) => isFloor(asked) && Math.abs(asked.point.at[1]) > NOTHING_M,
    predictWith: (asked, amount) => only(floorPlace(asked, [asked.point.at[0], amount * asked.point.at[1]])),
    predictPlanWith: ({ point }, amount) => [{ variant: "", at: [point.at[0], amount * point.at[1]] }],
    say: (_, amount) => say(Math.round((amount ?? 1) * 100)),
  };
}
