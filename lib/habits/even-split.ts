import { between } from "../geometry/vector";
import { topOfCorner } from "../plan/list-edges";
import { wallLine } from "../plan/wall-line";
import type { PicturePoint } from "../stage/frame";
import type { Asked } from "./asked";
import type { Habit } from "./habit";
import { NOTHING_M, only } from "./sight-lines";

/** A wall's end on the sheet at height `z`: on the drawn upright, in proportion. Null when the end is not on the sheet. */
function endAt(asked: Asked, foot: string, top: string, z: number): PicturePoint | null {
  const [low, high] = [asked.points.get(foot), asked.points.get(top)];
  const lowAt = asked.onSheet(foot);
  if (!low || !lowAt) return null;
  if (asked.point.onFloor) return lowAt;
  const highAt = asked.onSheet(top);
  if (!high || !highAt || Math.abs(high.at[2] - low.at[2]) < NOTHING_M) return null;
  const [X, Z] = between(lowAt, highAt, (z - low.at[2]) / (high.at[2] - low.at[2]));
  return [X, Z];
}

/** Divides the drawn wall as the plan divides the wall: linear between its drawn ends, at that height. */
export const evenSplit: Habit = {
  id: "even-split",
  name: "Wall divided as in the plan",
  applies: ({ point }) => point.group === "opening",
  predict: (asked) => {
    const { plan } = asked.exercise;
    const wall = plan.walls.find(({ id }) => id === asked.point.element);
    const line = wall && wallLine(plan, wall);
    if (!wall || !line) return [];
    const [x, y, z] = asked.point.at;
    const from = endAt(asked, `${wall.from}.foot`, topOfCorner(wall.from, wall, asked.points), z);
    const to = endAt(asked, `${wall.to}.foot`, topOfCorner(wall.to, wall, asked.points), z);
    if (!from || !to) return [];
    const along = (x - line.from[0]) * line.along[0] + (y - line.from[1]) * line.along[1];
    const [X, Z] = between(from, to, along / line.length);
    return only([[X, Z]]);
  },
  say: ({ point }) =>
    `You divided the drawn ${point.element} as the plan divides the wall. A receding wall shortens along its length: its perspective middle lies where its diagonals cross, nearer to its far end.`,
};
