import { leftOf, subtract, unit } from "../geometry/vector";
import type { PlanPoint, StagePoint } from "../stage/frame";
import { floorHeight, type Stage } from "../stage/stage";
import type { Stair } from "./plan";

export type Nosing = { readonly start: StagePoint; readonly end: StagePoint };

/**
 * The nosings of a flight, lowest first. Nosing i lies (i - 1) treads back, to the left of first -> second, and i risers
 * up from the floor at the first point (plus base). Empty when the nosing has no length.
 */
export function stairNosings(stair: Stair, stage: Pick<Stage, "rake">): readonly Nosing[] {
  const [first, second] = stair.nosing;
  const along = unit(subtract(second, first));
  if (!along) return [];
  const back = leftOf(along);
  const ground = floorHeight(stage, first[1]) + stair.base;
  const at = (p: PlanPoint, step: number): StagePoint => [
    p[0] + back[0] * (step - 1) * stair.tread,
    p[1] + back[1] * (step - 1) * stair.tread,
    ground + step * stair.riser,
  ];
  return Array.from({ length: stair.steps }, (_, i) => ({ start: at(first, i + 1), end: at(second, i + 1) }));
}
