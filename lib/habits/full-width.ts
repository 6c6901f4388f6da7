import { printLength } from "../measure/print-length";
import type { Habit } from "./habit";
import { isFloor, isReadBack, NOTHING_M, only } from "./sight-lines";

/** Keeps the plan's offset at depth: (x, Z_T). */
export const fullWidth: Habit = {
  id: "full-width",
  name: "Plan offset kept at depth",
  applies: (asked) => isFloor(asked) && Math.abs(asked.point.at[1]) > NOTHING_M,
  predict: ({ point, target }) => only([[point.at[0], target[1]]]),
  predictPlan: ({ point, target }) => [{ variant: "", at: [target[0], point.at[1]] }],
  say: ({ point, target, exercise }) => {
    const share = `${Math.round((point.s ?? 1) * 100)} %`;
    if (isReadBack({ exercise }))
      return `You took the drawn offset, ${printLength(Math.abs(target[0]), exercise.units, "near")}, for the true one. At this depth sizes are drawn at ${share}: run the ray from the CVP through the point to the plaster line, and read the offset there.`;
    return `You kept the plan's offset, ${printLength(Math.abs(point.at[0]), exercise.units, "near")}, at its true size. Only on the plaster line is it true; at this depth it is drawn at ${share}, on the ray to the CVP.`;
  },
};
