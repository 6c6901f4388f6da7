import type { Plan, Wall } from "../../plan/plan";
import type { PlanPoint } from "../../stage/frame";

/** So many walls that catch nothing here lend their directions and lengths all the same, the first of the plan. */
const LENDING = 40;
/** Nearer than this two places are one, metres. */
const SAME_PLACE_M = 1e-6;

/**
 * The walls of a plan that may catch a place: those whose lines pass near it, those that meet where is drawn from, and, where
 * something is drawn from somewhere, the first ones and those as long, for right angles, parallels and equal lengths. On a plan
 * of hundreds the rest only cost time while the pencil moves.
 */
export function catchable(plan: Plan, at: PlanPoint, tolerance: number, from: PlanPoint | null): Plan {
  const reach = from && Math.hypot(at[0] - from[0], at[1] - from[1]);
  return { ...plan, walls: plan.walls.filter((wall, i) => (from && i < LENDING) || mayCatch(wall)) };

  function mayCatch(wall: Wall): boolean {
    const [a, b] = [plan.corners.get(wall.from), plan.corners.get(wall.to)];
    if (!a || !b) return false;
    const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
    const length = Math.hypot(dx, dy);
    const off = Math.abs((at[0] - a[0]) * dy - (at[1] - a[1]) * dx);
    if (off <= (tolerance + SAME_PLACE_M) * length) return true;
    return from !== null && (Math.abs(length - (reach ?? 0)) <= tolerance || isAt(a, from) || isAt(b, from));
  }
}

function isAt(a: PlanPoint, b: PlanPoint): boolean {
  return Math.hypot(a[0] - b[0], a[1] - b[1]) < SAME_PLACE_M;
}
