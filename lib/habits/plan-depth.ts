import { downstageHalfShare } from "../perspective/foreshortening";
import type { Habit } from "./habit";
import { backWallFoot, isFloor, isReadBack, NOTHING_M, only, onRay } from "./sight-lines";

/** Places depth in the plan's proportion: ray(x, Z_b y / depth). */
export const planDepth: Habit = {
  id: "plan-depth",
  name: "Depth in plan proportion",
  applies: (asked) => isFloor(asked) && Math.abs(asked.point.at[1]) > NOTHING_M,
  predict: (asked) => {
    const whole = backWallFoot(asked);
    const [x, y] = asked.point.at;
    return whole === null ? [] : only([onRay(asked, x, (whole * y) / asked.exercise.stage.depth)]);
  },
  predictPlan: ({ target, exercise, point }) => {
    const whole = exercise.stage.depth;
    const foot = backWallFoot({ exercise });
    return foot === null ? [] : [{ variant: "", at: [point.at[0], (whole * target[1]) / foot] }];
  },
  say: ({ exercise }) => {
    const share = downstageHalfShare(exercise.viewer, exercise.stage);
    const fact =
      share === null ? "" : `: the downstage half of this floor takes ${Math.round(share * 100)} % of its height`;
    const idea = isReadBack({ exercise })
      ? "You read depth off in proportion to its height."
      : "You used up depth as the plan does.";
    return `${idea} In the picture it shortens as it goes upstage${fact}, so what lies past the middle is squeezed.`;
  },
};
