import type { Habit } from "./habit";
import { isFarCorner, isTopOrHead, only } from "./sight-lines";

/** Draws a raking wall's top edge level: Z = near's top. */
export const levelTop: Habit = {
  id: "level-top",
  name: "Raking wall's top drawn level",
  applies: (asked) => isTopOrHead(asked) && isFarCorner(asked) && asked.near?.top != null && asked.foot !== null,
  predict: ({ foot, near }) => (foot && near?.top ? only([[foot.at[0], near.top[1]]]) : []),
  say: ({ near }) =>
    `You drew the top of ${near?.wall.id ?? "the wall"} level. Only walls parallel to the plaster line stay level; a raking wall's top runs to its vanishing point.`,
};
