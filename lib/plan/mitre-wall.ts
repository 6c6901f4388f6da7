import { meet } from "../geometry/meet";
import { cross } from "../geometry/vector";
import type { PlanPoint } from "../stage/frame";
import type { Plan, Wall } from "./plan";
import { type WallLine, wallLine } from "./wall-line";

/** A corner sharper than this many thicknesses is cut square instead. */
const MITRE_LIMIT = 4;

export type WallEnd = "from" | "to";

/**
 * Where the offstage face of a wall ends at one of its corners: on the offstage face of the wall it meets there, or,
 * with none to meet, square across from the corner. Plan metres.
 */
export function mitreWall(
  plan: Plan,
  wall: Wall,
  line: WallLine,
  end: WallEnd,
): { readonly at: PlanPoint; readonly mitred: boolean } {
  const corner = line[end];
  const back = moved(corner, line.offstage, wall.thickness);
  const square = { at: back, mitred: false };
  const others = plan.walls.filter((w) => w !== wall && (w.from === wall[end] || w.to === wall[end]));
  const other = others[0];
  if (others.length !== 1 || !other || !(other.thickness > 0) || !(wall.thickness > 0)) return square;
  const otherLine = wallLine(plan, other);
  if (!otherLine || !sameSide(line, end, otherLine, other.from === wall[end] ? "from" : "to")) return square;
  const otherBack = moved(corner, otherLine.offstage, other.thickness);
  const at = meet([back, moved(back, line.along, 1)], [otherBack, moved(otherBack, otherLine.along, 1)]);
  if (!at) return square;
  const reach = Math.hypot(at[0] - corner[0], at[1] - corner[1]);
  return reach <= MITRE_LIMIT * Math.max(wall.thickness, other.thickness) ? { at, mitred: true } : square;
}

/** Walls that meet go on from each other when offstage is left of one leaving the corner and right of the other. */
function sameSide(one: WallLine, oneEnd: WallEnd, other: WallLine, otherEnd: WallEnd): boolean {
  const side = (line: WallLine, end: WallEnd) =>
    Math.sign(cross(line.along, line.offstage)) * (end === "from" ? 1 : -1);
  return side(one, oneEnd) === -side(other, otherEnd);
}

function moved([x, y]: PlanPoint, [dx, dy]: PlanPoint, by: number): PlanPoint {
  return [x + dx * by, y + dy * by];
}
