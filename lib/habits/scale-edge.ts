import type { Habit } from "./habit";
import { floorPlace, isFloor, NOTHING_M } from "./sight-lines";

/** Reads the wrong edge of the scale rule, for the offset alone or for both measures, so that they come out `factor` times. */
export function readWrongEdge(id: string, name: string, factor: number, sentence: string): Habit {
  return {
    id,
    name,
    applies: (asked) => isFloor(asked) && Math.hypot(asked.point.at[0], asked.point.at[1]) > NOTHING_M,
    predict: (asked) => {
      const [x, y] = asked.point.at;
      return [
        ...floorPlace(asked, [factor * x, y]).map((at) => ({ variant: "offset", at })),
        ...floorPlace(asked, [factor * x, factor * y]).map((at) => ({ variant: "both", at })),
      ];
    },
    predictPlan: ({
      point: {
        at: [x, y],
      },
    }) => [
      { variant: "offset", at: [factor * x, y] },
      { variant: "both", at: [factor * x, factor * y] },
    ],
    say: () => sentence,
  };
}
