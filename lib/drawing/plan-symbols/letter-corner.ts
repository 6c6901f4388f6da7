import type { Plan } from "../../plan/plan";
import { wallLine } from "../../plan/wall-line";
import { type Drawn, letterName } from "../clear-lettering";
import type { DisplayItem, DrawingPoint, Lettering } from "../display-list";
import { makeStroke } from "../make-stroke";

/** Directions this short have no side to them: the walls at the corner cancel each other. */
const NO_SIDE = 1e-6;
/** Arms of the cross at a corner no wall uses, millimetres of paper. */
const CROSS_ARM_MM = 1.2;

/** A corner's name, offstage of the walls that meet there and beyond their thickness, where it crosses least of what is drawn. */
export function letterCorner(
  plan: Pick<Plan, "corners" | "walls">,
  name: string,
  at: DrawingPoint,
  drawn: Drawn,
): Lettering {
  const away = awayFromStage(plan, name);
  return letterName(`plan.corner.${name}.name`, pastWall(plan, name, at, away), away, name, drawn);
}

/** A cross at a corner that no wall uses: a plain point on the floor. */
export function drawLoosePoint(name: string, [x, y]: DrawingPoint, scaleRatio: number): readonly DisplayItem[] {
  const arm = (CROSS_ARM_MM * scaleRatio) / 1000;
  return [
    makeStroke(
      `plan.corner.${name}.across`,
      [
        [x - arm, y],
        [x + arm, y],
      ],
      { weight: "thick" },
    ),
    makeStroke(
      `plan.corner.${name}.up`,
      [
        [x, y - arm],
        [x, y + arm],
      ],
      { weight: "thick" },
    ),
  ];
}

/** Which way a corner's name goes: offstage, between the walls that meet there; past the end of a wall that stands alone. */
function awayFromStage(plan: Pick<Plan, "corners" | "walls">, corner: string): DrawingPoint {
  const walls = plan.walls.filter((wall) => wall.from === corner || wall.to === corner);
  const lines = walls.flatMap((wall) => {
    const line = wallLine(plan, wall);
    return line ? [{ line, outward: wall.from === corner ? -1 : 1 }] : [];
  });
  const only = lines.length === 1 ? lines[0] : undefined;
  const [x, y] = only
    ? add(only.line.offstage, only.line.along, only.outward)
    : lines.reduce<DrawingPoint>((sum, { line }) => add(sum, line.offstage, 1), [0, 0]);
  return Math.hypot(x, y) > NO_SIDE ? [x, y] : [1, 1];
}

/** The corner's place on the back of the walls that meet there: its letter stands beyond their thickness. */
function pastWall(plan: Pick<Plan, "walls">, corner: string, at: DrawingPoint, away: DrawingPoint): DrawingPoint {
  const walls = plan.walls.filter((wall) => wall.from === corner || wall.to === corner);
  const thickest = Math.max(0, ...walls.map(({ thickness }) => thickness));
  return add(at, away, thickest / Math.hypot(...away));
}

function add(a: DrawingPoint, b: DrawingPoint, times: number): DrawingPoint {
  return [a[0] + b[0] * times, a[1] + b[1] * times];
}
