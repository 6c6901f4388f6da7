import { printLength } from "../measure/print-length";
import type { Asked } from "./asked";
import type { Habit } from "./habit";
import { floorPlace, isFloor, NOTHING_M, only } from "./sight-lines";

function fromJamb({ point, exercise }: Asked): number {
  return Math.sign(point.at[0]) * (exercise.stage.opening.width / 2 - Math.abs(point.at[0]));
}

/** Measures from the edge of the opening: the true point of (sign(x) (W/2 - |x|), y). */
export const fromTheJamb: Habit = {
  id: "from-the-jamb",
  name: "Offset measured from the opening's edge",
  applies: (asked) => isFloor(asked) && Math.abs(asked.point.at[0]) > NOTHING_M,
  predict: (asked) => only(floorPlace(asked, [fromJamb(asked), asked.point.at[1]])),
  predictPlan: (asked) => [{ variant: "", at: [fromJamb(asked), asked.point.at[1]] }],
  say: ({ point, exercise }) =>
    `You measured the offset from the edge of the opening. Offsets count from the centre line: ${printLength(Math.abs(point.at[0]), exercise.units, "near")} from there.`,
};
