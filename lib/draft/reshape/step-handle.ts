import type { Plan } from "../../plan/plan";
import { wallLine } from "../../plan/wall-line";
import type { PlanPoint } from "../../stage/frame";
import type { Thing } from "../draft";
import { type StepDirection, stepPoint } from "../snapping/step-point";
import type { Handle } from "./handle";
import { TURN_STEP } from "./resize";

type Step = { readonly direction: StepDirection; readonly grid: number; readonly times: number };

/**
 * Where a handle is brought by keys: on along the grid; a jamb along its wall as it is seen, a rim in or out, and a turn to the
 * left or right about the middle. Null where a direction means nothing.
 */
export function stepHandle(plan: Plan, thing: Thing, handle: Handle, step: Step): PlanPoint | null {
  const { direction, grid, times } = step;
  const [x, y] = handle.at;
  const across = direction === "stage left" ? 1 : direction === "stage right" ? -1 : 0;
  if (handle.kind === "jamb" && thing.kind === "opening") {
    const wall = plan.walls.find(({ id }) => id === thing.wall);
    const line = wall && wallLine(plan, wall);
    if (!line || across === 0) return null;
    const by = across * (line.along[0] >= 0 ? 1 : -1) * grid * times;
    return [x + line.along[0] * by, y + line.along[1] * by];
  }
  if (handle.kind === "turn") {
    const item = plan.furniture.find(({ id }) => id === thing.id);
    if (!item || across === 0) return null;
    const [dx, dy] = [x - item.at[0], y - item.at[1]];
    const [cos, sin] = [Math.cos(TURN_STEP * times * across), Math.sin(TURN_STEP * times * across)];
    return [item.at[0] + dx * cos - dy * sin, item.at[1] + dx * sin + dy * cos];
  }
  // Half a step at the rim is a whole one across.
  if (thing.kind === "column") return across === 0 ? null : [x + (across * grid * times) / 2, y];
  if (handle.kind === "size" || handle.kind === "top") {
    const [dx, dy] = stepPoint([0, 0], direction, grid * times);
    return [x + dx, y + dy];
  }
  let at: PlanPoint = handle.at;
  for (let i = 0; i < times; i++) at = stepPoint(at, direction, grid);
  return at;
}
