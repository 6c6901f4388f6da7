import type { Plan } from "../../plan/plan";
import type { Draft } from "../draft";
import { type Changed, type EditOf, withPlan } from "./changed";
import { select } from "./selection";

/**
 * Takes things off the plan. With a corner go the walls that end there, with a wall its openings and those of its corners
 * that no wall uses any more; what is asked or given of them goes as well.
 */
export function takeAway(draft: Draft, { things }: EditOf<"take-away">): Changed {
  const { plan } = draft.exercise;
  const selecting = select(plan, things);
  if (!selecting.ok) return selecting;
  if (things.length === 0) return { ok: true, draft, made: [] };
  const { corners, walls, openings, ...others } = selecting.selection;
  const goes = (wall: Plan["walls"][number]) => walls.has(wall.id) || corners.has(wall.from) || corners.has(wall.to);
  const left = plan.walls.filter((wall) => !goes(wall));
  const used = new Set(left.flatMap(({ from, to }) => [from, to]));
  const loose = new Set(plan.walls.filter(goes).flatMap(({ from, to }) => [from, to]));
  const keep = (name: string) => !corners.has(name) && (used.has(name) || !loose.has(name));
  const without = <Item extends { readonly id: string }>(items: readonly Item[], gone: ReadonlySet<string>) =>
    gone.size === 0 ? items : items.filter(({ id }) => !gone.has(id));
  return withPlan(draft, {
    corners: new Map([...plan.corners].filter(([name]) => keep(name))),
    walls: left.map((wall) => {
      const gone = openings.get(wall.id);
      return gone ? { ...wall, openings: without(wall.openings, gone) } : wall;
    }),
    platforms: without(plan.platforms, others.platforms),
    stairs: without(plan.stairs, others.stairs),
    furniture: without(plan.furniture, others.furniture),
    columns: without(plan.columns, others.columns),
    masking: without(plan.masking, others.masking),
  });
}
