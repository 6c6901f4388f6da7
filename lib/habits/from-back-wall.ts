import type { LengthUnits } from "../measure/length";
import { printLength } from "../measure/print-length";
import type { Habit } from "./habit";
import { floorPlace, isFloor, NOTHING_M, only } from "./sight-lines";

function standing(y: number, units: LengthUnits): string {
  if (Math.abs(y) <= NOTHING_M) return "this place lies on";
  return `${printLength(Math.abs(y), units, "near")} ${y > 0 ? "upstage of" : "before"}`;
}

/** Measures depth from the wrong end: the true point of (x, depth - y). */
export const fromBackWall: Habit = {
  id: "from-back-wall",
  name: "Depth measured from the back wall",
  applies: isFloor,
  predict: (asked) => only(floorPlace(asked, [asked.point.at[0], asked.exercise.stage.depth - asked.point.at[1]])),
  predictPlan: ({ point, exercise }) => [{ variant: "", at: [point.at[0], exercise.stage.depth - point.at[1]] }],
  say: ({ point, exercise }) =>
    `You measured the depth from the back wall. Depth counts from the plaster line: ${standing(point.at[1], exercise.units)} it.`,
};
