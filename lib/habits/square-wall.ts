import { centreVanishingPoint } from "../perspective/vanishing-point";
import type { Habit } from "./habit";
import { isCornerFoot, isFarCorner, onLineAtHeight, only } from "./sight-lines";

/** Sends a raking wall to the centre vanishing point: on the line near -> CVP, at Z_T. */
export const squareWall: Habit = {
  id: "square-wall",
  name: "Raking wall sent to the CVP",
  applies: (asked) => isCornerFoot(asked) && isFarCorner(asked),
  predict: ({ near, exercise, target }) =>
    near ? only(onLineAtHeight(near.foot, centreVanishingPoint(exercise.viewer), target[1])) : [],
  say: ({ near }) =>
    `You ran ${near?.wall.id ?? "the wall"} to the CVP, as if it stood square to the plaster line. It rakes, so it has a vanishing point of its own on the horizon.`,
};
