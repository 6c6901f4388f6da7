import { leftOf, subtract, unit } from "../geometry/vector";
import type { Stage } from "../stage/stage";
import type { Plan, Stair } from "./plan";
import { stairNosings } from "./stair-nosings";
import { insideOutline, platformTop } from "./surface-level";

/** A landing this near the top riser's level takes its place, metres. */
const SAME_LEVEL_M = 0.01;

/** Whether a platform goes on from a flight's top nosing at its level; the flight then has no tread of its own there. */
export function landsOnPlatform(plan: Pick<Plan, "platforms">, stair: Stair, stage: Pick<Stage, "rake">): boolean {
  const top = stairNosings(stair, stage).at(-1);
  const along = unit(subtract(stair.nosing[1], stair.nosing[0]));
  if (!top || !along) return false;
  const [across, back] = leftOf(along);
  const beyond = [
    (top.start[0] + top.end[0] + across * stair.tread) / 2,
    (top.start[1] + top.end[1] + back * stair.tread) / 2,
  ] as const;
  return plan.platforms.some(
    (p) => insideOutline(p.outline, beyond) && Math.abs(platformTop(p, stage) - top.start[2]) < SAME_LEVEL_M,
  );
}
