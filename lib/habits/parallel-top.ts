import type { Habit } from "./habit";
import { isTopOrHead, only } from "./sight-lines";

/** Draws the top parallel to the foot: Z = Z_F + (near's top - near's foot). */
export const parallelTop: Habit = {
  id: "parallel-top",
  name: "Top parallel to the foot",
  applies: (asked) => isTopOrHead(asked) && asked.foot !== null && asked.near?.top != null,
  predict: ({ foot, near }) => (foot && near?.top ? only([[foot.at[0], foot.at[1] + near.top[1] - near.foot[1]]]) : []),
  say: ({ near }) =>
    `You drew the top of ${near?.wall.id ?? "the wall"} parallel to its foot. Both go to one vanishing point on the horizon, so they draw together as they recede.`,
};
