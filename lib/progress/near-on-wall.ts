import type { Exercise } from "../exercise/exercise";
import type { ProjectedPoint } from "../exercise/exercise-points";
import { subtract, unit } from "../geometry/vector";
import type { Wall } from "../plan/plan";

/** A wall within this sine (about a degree) of square or parallel to the plaster line is not a raking one. */
const LEAST_RAKING = 0.02;

type Points = ReadonlyMap<string, ProjectedPoint>;

/**
 * What a point on a raking wall, or at a raking side of furniture or a platform, can be carried from: an end of that
 * wall or side, placed already, at the same edge of it. A foot, or a sill on the floor, is carried along the foot; a top
 * along the top; a head or a sill over the floor follows either. Of several the last placed; null for any other point, and
 * when no such end is on the sheet. `onSheet` is in the order of placing.
 */
export function nearOnRakingWall(
  { plan }: Pick<Exercise, "plan">,
  points: Points,
  point: ProjectedPoint,
  onSheet: ReadonlySet<string>,
): ProjectedPoint | null {
  const walls = plan.walls.filter((wall) => isRaking(plan.corners.get(wall.from), plan.corners.get(wall.to)));
  const ends = [...walls.flatMap((wall) => endsOnWall(wall, points, point)), ...endsOfSides(points, point)];
  const last = [...onSheet].findLast((name) => ends.includes(name));
  return (last !== undefined && points.get(last)) || null;
}

/** Names of a wall's ends from which the point can be carried; none where it is not of that wall. */
function endsOnWall(wall: Wall, points: Points, point: ProjectedPoint): readonly string[] {
  const foot = (corner: string) => `${corner}.foot`;
  const top = (corner: string) => (points.has(`${corner}.top`) ? `${corner}.top` : `${corner}.top.${wall.id}`);
  if (point.group === "opening" && point.element === wall.id) {
    const feet = [foot(wall.from), foot(wall.to)];
    return point.onFloor ? feet : [...feet, top(wall.from), top(wall.to)];
  }
  if (point.group !== "corner" || (point.element !== wall.from && point.element !== wall.to)) return [];
  const other = point.element === wall.from ? wall.to : wall.from;
  if (point.role === "foot") return [foot(other)];
  return point.name === top(point.element) ? [top(other)] : [];
}

/** The corners next to one of a piece of furniture or a platform, at the same level, along sides that rake. */
function endsOfSides(points: Points, point: ProjectedPoint): readonly string[] {
  if (point.group !== "furniture" && point.group !== "platform") return [];
  const round = [...points.values()].filter(
    ({ group, element, role }) => group === point.group && element === point.element && role === point.role,
  );
  const at = round.findIndex(({ name }) => name === point.name);
  const beside = [round.at(at - 1), round[(at + 1) % round.length]];
  return beside.flatMap((other) => (other && isRaking(planOf(other), planOf(point)) ? [other.name] : []));
}

function planOf({ at }: ProjectedPoint): readonly [number, number] {
  return [at[0], at[1]];
}

function isRaking(a: readonly [number, number] | undefined, b: readonly [number, number] | undefined): boolean {
  const along = a && b ? unit(subtract(b, a)) : null;
  return along?.every((each) => Math.abs(each) > LEAST_RAKING) ?? false;
}
