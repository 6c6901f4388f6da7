import { SAME_POINT_M } from "../../geometry/segments-cross";
import { distance } from "../../geometry/vector";
import type { LengthUnits } from "../../measure/length";
import type { Plan } from "../../plan/plan";
import { wallLine } from "../../plan/wall-line";
import type { PlanPoint } from "../../stage/frame";
import type { Thing } from "../draft";
import type { Edit } from "../edit";
import { catchable } from "../snapping/catchable";
import type { Caught } from "../snapping/snap";
import { snapPoint } from "../snapping/snap-point";
import { type Handle, type HandleName, nameOfHandle } from "./handle";
import { resizeColumn, resizeFurniture, resizeOpening, runStair, turnFurniture } from "./resize";

/** How a handle goes: by steps of the grid, metres, and to what lies within the tolerance; 0 for keys, which have made their step. */
export type ReshapeBy = { readonly grid: number; readonly tolerance: number; readonly units: LengthUnits };

export type Reshaped = {
  readonly edit: Edit;
  /** What the handle goes by afterwards: an edge that was pulled out is a corner now. */
  readonly handle: HandleName;
  readonly caught: readonly Caught[];
};

/**
 * The edit that brings a handle of a thing to a place of the plan that was pointed at, or stepped to by keys, and what caught it
 * there. Null where the thing has no such handle, or two of its corners would be one.
 */
export function reshape(plan: Plan, thing: Thing, handle: Handle, to: PlanPoint, by: ReshapeBy): Reshaped | null {
  const { id } = thing;
  const as = (edit: Edit | null, caught: readonly Caught[] = []): Reshaped | null =>
    edit && { edit, handle: nameOfHandle(handle), caught };
  const named = <Item extends { readonly id: string }>(items: readonly Item[]) => items.find((item) => item.id === id);
  switch (thing.kind) {
    case "platform": {
      const outline = named(plan.platforms)?.outline;
      const i = handle.number - 1;
      if (!outline?.[i]) return null;
      const at = (k: number) => outline[(k + outline.length) % outline.length] as PlanPoint;
      if (handle.kind === "corner") {
        const snapped = snap(plan, to, [at(i - 1), at(i + 1)], by);
        if (outline.some((corner, k) => k !== i && isOne(corner, snapped.at))) return null;
        const moved = outline.map((corner, k) => (k === i ? snapped.at : corner));
        return as({ edit: "change-platform", id, change: { outline: moved } }, snapped.to);
      }
      const snapped = snap(plan, to, [at(i), at(i + 1)], by);
      const edit: Edit = { edit: "add-platform-corner", id, after: handle.number, at: snapped.at };
      return { edit, handle: `corner ${handle.number + 1}`, caught: snapped.to };
    }
    case "stair": {
      const stair = named(plan.stairs);
      if (!stair) return null;
      if (handle.kind === "top") {
        const change = runStair(stair, handle.number, to, by);
        return as(change && { edit: "change-stair", id, change });
      }
      const moved = moveEnd(plan, stair.nosing, handle.number, to, by);
      return moved && as({ edit: "change-stair", id, change: { nosing: moved.line } }, moved.caught);
    }
    case "masking": {
      const cloth = named(plan.masking);
      if (!cloth) return null;
      const moved = moveEnd(plan, cloth.line, handle.number, to, by);
      return moved && as({ edit: "change-masking", id, change: { line: moved.line } }, moved.caught);
    }
    case "furniture": {
      const item = named(plan.furniture);
      if (!item) return null;
      const walls = plan.walls.flatMap((wall) => {
        const line = wallLine(plan, wall);
        return line ? [{ id: wall.id, along: line.along }] : [];
      });
      if (handle.kind === "turn") {
        const turned = turnFurniture(item, to, by.tolerance > 0 ? walls : []);
        return turned && as({ edit: "change-furniture", id, change: { turn: turned.turn } }, turned.caught);
      }
      return as({ edit: "change-furniture", id, change: resizeFurniture(item, handle.number, to, by) });
    }
    case "column": {
      const column = named(plan.columns);
      return column ? as({ edit: "change-column", id, change: resizeColumn(column, to, by) }) : null;
    }
    case "opening": {
      const wall = plan.walls.find((each) => each.id === thing.wall);
      const opening = wall && named(wall.openings);
      const line = wall && wallLine(plan, wall);
      if (!opening || !line) return null;
      const change = resizeOpening(opening, line, handle.number, to, by);
      return as({ edit: "change-opening", wall: thing.wall, id, change });
    }
    case "corner":
    case "wall":
      return null;
  }
}

/** Where a free handle goes: as a wall's corner would, and level with its neighbours or straight upstage of them. */
function snap(plan: Plan, to: PlanPoint, beside: readonly PlanPoint[], { grid, tolerance }: ReshapeBy) {
  const near = catchable(plan, to, tolerance, null);
  return snapPoint(to, { plan: near, grid, tolerance, from: null, beside, without: new Set() });
}

type Line = readonly [PlanPoint, PlanPoint];

/** A line with one end elsewhere; null where it would come to the other end. */
function moveEnd(plan: Plan, line: Line, end: number, to: PlanPoint, by: ReshapeBy) {
  const stays = line[end === 1 ? 1 : 0];
  const { at, to: caught } = snap(plan, to, [stays], by);
  if (isOne(at, stays)) return null;
  const moved: Line = end === 1 ? [at, stays] : [stays, at];
  return { line: moved, caught };
}

function isOne(a: PlanPoint, b: PlanPoint): boolean {
  return distance(a, b) < SAME_POINT_M;
}
