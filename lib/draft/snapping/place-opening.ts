import type { Plan } from "../../plan/plan";
import { wallLine } from "../../plan/wall-line";
import type { PlanPoint } from "../../stage/frame";

export type OpeningPlace = {
  /** From the wall's `from` corner to the start jamb, metres. */
  readonly at: number;
  readonly caughtBy: "grid" | "middle" | null;
};

export type OpeningSnap = {
  /** Step of the grid, metres, or null. */
  readonly grid: number | null;
  /** How near the middle of the wall catches, metres. */
  readonly tolerance: number;
};

/**
 * Where an opening of a width goes in a wall when its middle is pointed at: in the middle of the wall where that is near, else
 * by the grid's steps from the nearer end of the wall, never past its ends. Null for a wall that is not there, has no length,
 * or is shorter than the opening.
 */
export function placeOpening(
  plan: Plan,
  wallId: string,
  width: number,
  pointed: PlanPoint,
  { grid, tolerance }: OpeningSnap,
): OpeningPlace | null {
  const wall = plan.walls.find(({ id }) => id === wallId);
  const line = wall ? wallLine(plan, wall) : null;
  if (!line || !(width <= line.length)) return null;
  const { from, along, length } = line;
  const room = length - width;
  const wish = (pointed[0] - from[0]) * along[0] + (pointed[1] - from[1]) * along[1] - width / 2;
  if (Math.abs(wish - room / 2) <= tolerance) return { at: room / 2, caughtBy: "middle" };
  const at = Math.max(0, Math.min(wish, room));
  if (grid === null || at === 0 || at === room) return { at, caughtBy: null };
  const steps = (clear: number) => Math.min(room, Math.round(clear / grid) * grid);
  return { at: at <= room / 2 ? steps(at) : room - steps(room - at), caughtBy: "grid" };
}
