import type { Habit } from "./habit";
import { floorPlace, isFloor, NOTHING_M, only } from "./sight-lines";

/** Mirrors across the centre line: the true point of (-x, y). */
export const wrongSide: Habit = {
  id: "wrong-side",
  name: "The wrong side of the centre line",
  applies: (asked) => isFloor(asked) && Math.abs(asked.point.at[0]) > NOTHING_M,
  predict: (asked) => only(floorPlace(asked, [-asked.point.at[0], asked.point.at[1]])),
  predictPlan: ({ point }) => [{ variant: "", at: [-point.at[0], point.at[1]] }],
  say: ({ point }) =>
    `You put it on the other side of the centre line. It stands stage ${point.at[0] > 0 ? "left, which is the viewer's right" : "right, which is the viewer's left"}.`,
};
