import type { Opening, Plan, Wall } from "../../plan/plan";
import { type WallLine, wallLine } from "../../plan/wall-line";
import type { PlanPoint } from "../../stage/frame";
import type { Draft } from "../draft";
import { type Changed, type EditOf, type Renaming, refuse, withPlan } from "./changed";
import { mirrorRenaming } from "./mirror-renaming";
import {
  mirrorAcross,
  mirrorWall,
  type Placing,
  placeColumn,
  placeFurniture,
  placeMasking,
  placePlatform,
  placeStair,
  shiftBy,
  turnAbout,
} from "./placing";
import { cornersOf, type Selection, select } from "./selection";

/**
 * Moves things. A wall takes its corners along, and so the ends of its neighbours; an opening whose wall stays slides along
 * it, as far as the wall goes.
 */
export function moveThings(draft: Draft, { things, by }: EditOf<"move">): Changed {
  const { plan } = draft.exercise;
  const selecting = select(plan, things);
  if (!selecting.ok) return selecting;
  if (things.length === 0 || (by[0] === 0 && by[1] === 0)) return { ok: true, draft, made: [] };
  const { selection } = selecting;
  const moved = placeSelection(plan, selection, shiftBy(by));
  return withPlan(draft, { ...moved, walls: slideOpenings(plan, moved.walls, selection, by) });
}

/** Turns things about a place. An opening turns with its wall, never by itself. */
export function turnThings(draft: Draft, { things, about, angle }: EditOf<"turn">): Changed {
  const { plan } = draft.exercise;
  const selecting = select(plan, things);
  if (!selecting.ok) return selecting;
  if (things.length > 0 && things.every(({ kind }) => kind === "opening"))
    return refuse("An opening turns with its wall. Choose the wall to turn it.");
  if (things.length === 0 || angle === 0) return { ok: true, draft, made: [] };
  return withPlan(draft, placeSelection(plan, selecting.selection, turnAbout(about, angle)));
}

/** Mirrors things where they are, across the line x = `x`. An opening is mirrored with its wall, never by itself. */
export function mirrorThings(draft: Draft, { things, x }: EditOf<"mirror">): Changed {
  const { plan } = draft.exercise;
  const selecting = select(plan, things);
  if (!selecting.ok) return selecting;
  if (things.length > 0 && things.every(({ kind }) => kind === "opening"))
    return refuse("An opening is mirrored with its wall. Choose the wall to mirror it.");
  if (things.length === 0) return { ok: true, draft, made: [] };
  const { selection } = selecting;
  const renaming: Renaming = mirrorRenaming(selection, mirroredWalls(plan, cornersOf(plan, selection)));
  return withPlan(draft, placeSelection(plan, selection, mirrorAcross(x)), [], renaming);
}

function placeSelection(plan: Plan, selection: Selection, placing: Placing): Plan {
  const corners = cornersOf(plan, selection);
  const each = <Item extends { readonly id: string }>(
    items: readonly Item[],
    chosen: ReadonlySet<string>,
    put: (item: Item, placing: Placing) => Item,
  ) => (chosen.size === 0 ? items : items.map((item) => (chosen.has(item.id) ? put(item, placing) : item)));
  return {
    corners:
      corners.size === 0
        ? plan.corners
        : new Map([...plan.corners].map(([name, at]) => [name, corners.has(name) ? placing.place(at) : at])),
    walls: placing.mirrors ? turnMirroredWalls(plan, corners, placing) : plan.walls,
    platforms: each(plan.platforms, selection.platforms, placePlatform),
    stairs: each(plan.stairs, selection.stairs, placeStair),
    furniture: each(plan.furniture, selection.furniture, placeFurniture),
    columns: each(plan.columns, selection.columns, placeColumn),
    masking: each(plan.masking, selection.masking, placeMasking),
  };
}

/** The walls both of whose corners are mirrored, chosen or not: they would else turn their onstage face offstage. */
function mirroredWalls(plan: Plan, corners: ReadonlySet<string>): ReadonlySet<string> {
  return new Set(
    plan.walls
      .filter((wall) => corners.has(wall.from) && corners.has(wall.to) && wallLine(plan, wall))
      .map(({ id }) => id),
  );
}

function turnMirroredWalls(plan: Plan, corners: ReadonlySet<string>, { place }: Placing): readonly Wall[] {
  const mirrored = mirroredWalls(plan, corners);
  return plan.walls.map((wall) =>
    mirrored.has(wall.id) ? mirrorWall(wall, wallLine(plan, wall) as WallLine, place) : wall,
  );
}

/** Openings chosen without their wall slide along it by what of the move runs along it. */
function slideOpenings(plan: Plan, walls: readonly Wall[], selection: Selection, by: PlanPoint): readonly Wall[] {
  const corners = cornersOf(plan, selection);
  return walls.map((wall) => {
    const chosen = selection.openings.get(wall.id);
    const line = wallLine(plan, wall);
    if (!chosen || !line || corners.has(wall.from) || corners.has(wall.to)) return wall;
    const along = by[0] * line.along[0] + by[1] * line.along[1];
    const slide = (opening: Opening) => ({
      ...opening,
      at: keepOnWall(opening.at + along, opening.width, line.length),
    });
    return { ...wall, openings: wall.openings.map((opening) => (chosen.has(opening.id) ? slide(opening) : opening)) };
  });
}

function keepOnWall(at: number, width: number, length: number): number {
  return Math.max(0, Math.min(at, length - width));
}
