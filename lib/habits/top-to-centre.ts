import { centreVanishingPoint } from "../perspective/vanishing-point";
import type { Habit } from "./habit";
import { isFarCorner, isTopOrHead, onLineAcross, only } from "./sight-lines";

/** Sends a raking wall's top edge to the centre vanishing point: on the line near's top -> CVP, at X_F. */
export const topToCentre: Habit = {
  id: "top-to-centre",
  name: "Raking wall's top sent to the CVP",
  applies: (asked) => isTopOrHead(asked) && isFarCorner(asked) && asked.near?.top != null && asked.foot !== null,
  predict: ({ foot, near, exercise }) =>
    foot && near?.top ? only(onLineAcross(near.top, centreVanishingPoint(exercise.viewer), foot.at[0])) : [],
  say: ({ near }) =>
    `You ran the top of ${near?.wall.id ?? "the wall"} to the CVP. The wall rakes: its top goes where its foot goes, to its own vanishing point on the horizon.`,
};
