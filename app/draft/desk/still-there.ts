import type { Thing } from "@/lib/draft/draft";
import type { Plan } from "@/lib/plan/plan";

/** Whether a plan has a thing. */
export function stillThere(thing: Thing, plan: Plan): boolean {
  const named = ({ id }: { readonly id: string }) => id === thing.id;
  switch (thing.kind) {
    case "corner":
      return plan.corners.has(thing.id);
    case "wall":
      return plan.walls.some(named);
    case "opening":
      return plan.walls.some(({ id, openings }) => id === thing.wall && openings.some(named));
    case "platform":
      return plan.platforms.some(named);
    case "stair":
      return plan.stairs.some(named);
    case "furniture":
      return plan.furniture.some(named);
    case "column":
      return plan.columns.some(named);
    case "masking":
      return plan.masking.some(named);
  }
}
