import type { Habit } from "./habit";
import {
  isCornerFoot,
  isFarCorner,
  isTopOrHead,
  onLineAcross,
  onLineAtHeight,
  otherVanishingPoints,
} from "./sight-lines";

/** Sends a raking wall to another wall's vanishing point: on that line, at Z_T for a foot, at X_F for a top. */
export const borrowedVanishingPoint: Habit = {
  id: "borrowed-vanishing-point",
  name: "Another wall's vanishing point",
  applies: (asked) => isFarCorner(asked) && (isCornerFoot(asked) || (isTopOrHead(asked) && asked.near?.top != null)),
  predict: (asked) => {
    const { near, target, foot } = asked;
    if (!near) return [];
    return otherVanishingPoints(asked).flatMap(({ id, at }) => {
      const places = isCornerFoot(asked)
        ? onLineAtHeight(near.foot, at, target[1])
        : near.top && foot
          ? onLineAcross(near.top, at, foot.at[0])
          : [];
      return places.map((place) => ({ variant: id, at: place }));
    });
  },
  say: ({ near }) =>
    `You ran ${near?.wall.id ?? "the wall"} to the vanishing point of another wall. Every direction in the plan has its own; only parallel walls share one.`,
};
