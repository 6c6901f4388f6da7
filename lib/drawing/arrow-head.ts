import type { DrawingPoint } from "./display-list";

/** Half the opening angle of an arrow's head, radians. */
const HALF_ANGLE = (16 * Math.PI) / 180;

/** The open head of an arrow that runs from `tail` to `tip`: barb, tip, barb. */
export function arrowHead(tail: DrawingPoint, tip: DrawingPoint, length: number): readonly DrawingPoint[] {
  const back = Math.atan2(tail[1] - tip[1], tail[0] - tip[0]);
  const barb = (turn: number): DrawingPoint => [
    tip[0] + length * Math.cos(back + turn),
    tip[1] + length * Math.sin(back + turn),
  ];
  return [barb(HALF_ANGLE), tip, barb(-HALF_ANGLE)];
}
