import { printLength } from "../measure/print-length";
import type { Habit } from "./habit";
import { isTopOrHead, NOTHING_M, only } from "./sight-lines";

/** Keeps the true height at depth: Z = Z_F + height. */
export const fullHeight: Habit = {
  id: "full-height",
  name: "True height kept at depth",
  applies: (asked) => isTopOrHead(asked) && asked.foot !== null && Math.abs(asked.point.at[1]) > NOTHING_M,
  predict: ({ foot }) => (foot ? only([[foot.at[0], foot.at[1] + foot.height]]) : []),
  say: ({ foot, point, exercise }) =>
    `You kept the true height, ${printLength(foot?.height ?? 0, exercise.units, "near")}, over its foot. Heights ${point.at[1] > 0 ? "shorten with depth" : "grow before the plaster line"} as widths do: here to ${Math.round((point.s ?? 1) * 100)} %.`,
};
