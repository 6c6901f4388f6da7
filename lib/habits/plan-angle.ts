import type { Habit } from "./habit";
import { isCornerFoot, isFarCorner, only } from "./sight-lines";

/** Copies the plan's angle on to the picture: from near in the plan's direction (dx, dy), up to Z_T. */
export const planAngle: Habit = {
  id: "plan-angle",
  name: "Raking wall at its plan angle",
  applies: (asked) => isCornerFoot(asked) && isFarCorner(asked),
  predict: ({ near, target }) => {
    if (!near) return [];
    const [dx, dy] = near.direction;
    return only([[near.foot[0] + (dx / dy) * (target[1] - near.foot[1]), target[1]]]);
  },
  say: ({ near }) =>
    `You copied the angle of ${near?.wall.id ?? "the wall"} from the plan. In the picture depth is squeezed and width is not, so the wall lies much flatter than in the plan.`,
};
