import { backProjectToFloor, project } from "../perspective/project";
import type { Habit } from "./habit";
import { isFloor, isReadBack, NOTHING_M, only } from "./sight-lines";

/** Forgets that a raked floor rises: the true point of (x, y, 0). */
export const flatFloor: Habit = {
  id: "flat-floor",
  name: "Raked floor drawn level",
  applies: (asked) => isFloor(asked) && asked.exercise.stage.rake > 0 && asked.point.at[1] > NOTHING_M,
  predict: ({ exercise, point }) => {
    const seen = project(exercise.viewer, [point.at[0], point.at[1], 0]);
    return seen.seen ? only([seen.at]) : [];
  },
  predictPlan: ({ exercise, target }) => {
    const place = backProjectToFloor(exercise.viewer, { rake: 0 }, target);
    return place.found ? [{ variant: "", at: [place.at[0], place.at[1]] }] : [];
  },
  say: (asked) =>
    `You ${isReadBack(asked) ? "read it as if the floor were" : "drew the floor"} level. This stage is raked: the floor rises as it goes upstage, so every place on it lies higher in the picture.`,
};
