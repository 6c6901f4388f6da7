import type { Plan, Wall } from "../../plan/plan";
import type { Draft, Thing } from "../draft";
import { type Changed, type EditOf, notThere, type Refused, refuse, withPlan } from "./changed";
import { refuseName, takenNames } from "./names";
import { renameElement, renameOpening, renameWall } from "./rename";

type Named = { readonly id: string };
type Replaced<Item> = { readonly ok: true; readonly items: readonly Item[]; readonly id: string } | Refused;

/** One of a list with some of its members changed; refuses what is not there, and names that cannot be. */
function replace<Item extends Named>(
  items: readonly Item[],
  { id, change }: { readonly id: string; readonly change: Partial<Item> },
  missing: () => Refused,
  taken: () => ReadonlySet<string>,
): Replaced<Item> {
  const before = items.find((item) => item.id === id);
  if (!before) return missing();
  const after: Item = { ...before, ...change };
  const say = after.id === id ? null : refuseName(after.id, taken());
  if (say) return refuse(say);
  return { ok: true, items: items.map((item) => (item === before ? after : item)), id: after.id };
}

type ChangeThing = EditOf<"change-platform" | "change-stair" | "change-furniture" | "change-column" | "change-masking">;

/** Changes members of something that stands or hangs on the stage; where its name changes, its points follow. */
export function changeThing(draft: Draft, edit: ChangeThing): Changed {
  const { plan } = draft.exercise;
  const change = <Item extends Named>(
    kind: Thing["kind"],
    items: readonly Item[],
    asked: { readonly id: string; readonly change: Partial<Item> },
    put: (items: readonly Item[]) => Partial<Plan>,
  ): Changed => {
    const replaced = replace(
      items,
      asked,
      () => notThere(kind, asked.id),
      () => takenNames(plan),
    );
    if (!replaced.ok) return replaced;
    const renaming = replaced.id === asked.id ? undefined : renameElement(asked.id, replaced.id);
    return withPlan(draft, { ...plan, ...put(replaced.items) }, [], renaming);
  };
  switch (edit.edit) {
    case "change-platform":
      return change("platform", plan.platforms, edit, (platforms) => ({ platforms }));
    case "change-stair":
      return change("stair", plan.stairs, edit, (stairs) => ({ stairs }));
    case "change-furniture":
      return change("furniture", plan.furniture, edit, (furniture) => ({ furniture }));
    case "change-column":
      return change("column", plan.columns, edit, (columns) => ({ columns }));
    case "change-masking":
      return change("masking", plan.masking, edit, (masking) => ({ masking }));
  }
}

/** Changes members of a wall; its corners and openings stay. */
export function changeWall(draft: Draft, { id, change }: EditOf<"change-wall">): Changed {
  const { plan } = draft.exercise;
  const replaced = replace<Wall>(
    plan.walls,
    { id, change },
    () => notThere("wall", id),
    () => takenNames(plan),
  );
  if (!replaced.ok) return replaced;
  const renaming = replaced.id === id ? undefined : renameWall(id, replaced.id);
  return withPlan(draft, { ...plan, walls: replaced.items }, [], renaming);
}

/** Changes members of an opening, which stays in its wall. */
export function changeOpening(draft: Draft, { wall: wallId, id, change }: EditOf<"change-opening">): Changed {
  const { plan } = draft.exercise;
  const wall = plan.walls.find((other) => other.id === wallId);
  if (!wall) return notThere("wall", wallId);
  const replaced = replace(
    wall.openings,
    { id, change },
    () => notThere("opening", id, wallId),
    () => new Set(wall.openings.map((other) => other.id)),
  );
  if (!replaced.ok) return replaced;
  const changed = { ...wall, openings: replaced.items };
  const walls = plan.walls.map((other) => (other === wall ? changed : other));
  const renaming =
    replaced.id === id ? undefined : renameOpening({ wall: wallId, id }, { wall: wallId, id: replaced.id });
  return withPlan(draft, { ...plan, walls }, [], renaming);
}
