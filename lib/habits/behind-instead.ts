import type { Habit } from "./habit";
import { floorPlace, isFloor, isReadBack, NOTHING_M, only } from "./sight-lines";

/** Treats a point before the plaster line as upstage of it: the true point of (x, -y). */
export const behindInstead: Habit = {
  id: "behind-instead",
  name: "Before the plaster line drawn upstage of it",
  applies: (asked) => isFloor(asked) && asked.point.at[1] < -NOTHING_M,
  predict: (asked) => only(floorPlace(asked, [asked.point.at[0], -asked.point.at[1]])),
  predictPlan: ({ point }) => [{ variant: "", at: [point.at[0], -point.at[1]] }],
  say: (asked) =>
    `You ${isReadBack(asked) ? "put" : "drew"} it upstage of the plaster line. It stands before it, on the apron: its ray runs on forward and downward, and it is drawn larger than true size.`,
};
