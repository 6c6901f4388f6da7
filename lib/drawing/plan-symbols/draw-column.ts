import type { Column } from "../../plan/plan";
import { circlePoints } from "../arc-points";
import type { DisplayItem } from "../display-list";
import { makeStroke } from "../make-stroke";

/** A column in plan, cut: a toned circle of its diameter with its centre marked. */
export function drawColumn({ id, at, diameter }: Column): readonly DisplayItem[] {
  const [x, y] = at;
  const arm = diameter / 6;
  return [
    makeStroke(`plan.column.${id}.cut`, circlePoints(at, diameter / 2), {
      closed: true,
      weight: "extra-thick",
      fill: "wall",
      hand: true,
    }),
    makeStroke(`plan.column.${id}.centre.across`, [
      [x - arm, y],
      [x + arm, y],
    ]),
    makeStroke(`plan.column.${id}.centre.up`, [
      [x, y - arm],
      [x, y + arm],
    ]),
  ];
}
