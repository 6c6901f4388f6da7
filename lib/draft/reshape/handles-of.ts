import { between, leftOf, subtract, unit } from "../../geometry/vector";
import { furnitureCorners } from "../../plan/furniture-corners";
import type { Furniture, Plan, Platform, Stair } from "../../plan/plan";
import { openingJambs, wallLine } from "../../plan/wall-line";
import type { PlanPoint } from "../../stage/frame";
import type { Thing } from "../draft";
import type { Handle } from "./handle";

/** What furniture is turned by stands so far before its front, metres. */
const TURN_OFF_M = 0.5;

/** The handles of a thing, round its outline; none where it has none of its own (a wall is reshaped by its corners), or no place. */
export function handlesOf(plan: Plan, thing: Thing): readonly Handle[] {
  const named = <Item extends { readonly id: string }>(items: readonly Item[]) =>
    items.find(({ id }) => id === thing.id) ?? null;
  switch (thing.kind) {
    case "platform":
      return handlesOfPlatform(named(plan.platforms));
    case "stair":
      return handlesOfStair(named(plan.stairs));
    case "furniture":
      return handlesOfFurniture(named(plan.furniture));
    case "column": {
      const column = named(plan.columns);
      return column ? [{ kind: "size", number: 1, at: [column.at[0] + column.diameter / 2, column.at[1]] }] : [];
    }
    case "masking":
      return numbered("end", named(plan.masking)?.line ?? []);
    case "opening": {
      const wall = plan.walls.find(({ id }) => id === thing.wall);
      const opening = wall && named(wall.openings);
      const line = wall && wallLine(plan, wall);
      if (!opening || !line) return [];
      const { start, end } = openingJambs(line, opening);
      return numbered("jamb", [start, end]);
    }
    case "corner":
    case "wall":
      return [];
  }
}

function numbered(kind: Handle["kind"], places: readonly PlanPoint[]): readonly Handle[] {
  return places.map((at, i): Handle => ({ kind, number: i + 1, at }));
}

function handlesOfPlatform(platform: Platform | null): readonly Handle[] {
  const outline = platform?.outline ?? [];
  return outline.flatMap((at, i): readonly Handle[] => [
    { kind: "corner", number: i + 1, at },
    { kind: "edge", number: i + 1, at: between(at, outline[(i + 1) % outline.length] as PlanPoint, 0.5) },
  ]);
}

function handlesOfStair(stair: Stair | null): readonly Handle[] {
  const along = stair && unit(subtract(stair.nosing[1], stair.nosing[0]));
  if (!stair || !along) return [];
  const ends = numbered("end", stair.nosing);
  const back = leftOf(along);
  const run = (stair.steps - 1) * stair.tread;
  if (!(run > 0)) return ends;
  const tops = stair.nosing.map(([x, y]): PlanPoint => [x + back[0] * run, y + back[1] * run]);
  return [...ends, ...numbered("top", tops).toReversed()];
}

function handlesOfFurniture(item: Furniture | null): readonly Handle[] {
  if (!item) return [];
  const off = item.depth / 2 + TURN_OFF_M;
  const turn: PlanPoint = [item.at[0] + Math.sin(item.turn) * off, item.at[1] - Math.cos(item.turn) * off];
  return [...numbered("size", furnitureCorners(item)), { kind: "turn", number: 1, at: turn }];
}
