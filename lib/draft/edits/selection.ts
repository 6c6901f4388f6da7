import type { Plan } from "../../plan/plan";
import type { Thing } from "../draft";
import { notThere, type Refused } from "./changed";

/** The things an edit is about, by kind. */
export type Selection = {
  readonly corners: ReadonlySet<string>;
  readonly walls: ReadonlySet<string>;
  /** Openings by wall. */
  readonly openings: ReadonlyMap<string, ReadonlySet<string>>;
  readonly platforms: ReadonlySet<string>;
  readonly stairs: ReadonlySet<string>;
  readonly furniture: ReadonlySet<string>;
  readonly columns: ReadonlySet<string>;
  readonly masking: ReadonlySet<string>;
};

export type Selecting = { readonly ok: true; readonly selection: Selection } | Refused;

/** Sorts things by kind; refuses when one of them is not on the plan. */
export function select(plan: Plan, things: readonly Thing[]): Selecting {
  for (const thing of things)
    if (!isThere(plan, thing)) return notThere(thing.kind, thing.id, thing.kind === "opening" ? thing.wall : undefined);
  const ids = (kind: Thing["kind"]) => new Set(things.filter((thing) => thing.kind === kind).map(({ id }) => id));
  const openings = new Map<string, Set<string>>();
  for (const thing of things)
    if (thing.kind === "opening") openings.set(thing.wall, (openings.get(thing.wall) ?? new Set()).add(thing.id));
  return {
    ok: true,
    selection: {
      corners: ids("corner"),
      walls: ids("wall"),
      openings,
      platforms: ids("platform"),
      stairs: ids("stair"),
      furniture: ids("furniture"),
      columns: ids("column"),
      masking: ids("masking"),
    },
  };
}

function isThere(plan: Plan, thing: Thing): boolean {
  const among = (items: readonly { readonly id: string }[]) => items.some(({ id }) => id === thing.id);
  switch (thing.kind) {
    case "corner":
      return plan.corners.has(thing.id);
    case "wall":
      return among(plan.walls);
    case "opening":
      return among(plan.walls.find(({ id }) => id === thing.wall)?.openings ?? []);
    case "platform":
      return among(plan.platforms);
    case "stair":
      return among(plan.stairs);
    case "furniture":
      return among(plan.furniture);
    case "column":
      return among(plan.columns);
    case "masking":
      return among(plan.masking);
  }
}

/** The corners that go where the selection goes: its own and the ends of its walls. */
export function cornersOf(plan: Plan, { corners, walls }: Selection): ReadonlySet<string> {
  const ends = plan.walls.filter(({ id }) => walls.has(id)).flatMap(({ from, to }) => [from, to]);
  return new Set([...corners, ...ends.filter((name) => plan.corners.has(name))]);
}
