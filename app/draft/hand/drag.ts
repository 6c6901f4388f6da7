import type { Draft, Thing } from "@/lib/draft/draft";
import type { Edit } from "@/lib/draft/edit";
import { catchable } from "@/lib/draft/snapping/catchable";
import { placeOpening } from "@/lib/draft/snapping/place-opening";
import { sayCaught } from "@/lib/draft/snapping/say-caught";
import { snapPoint } from "@/lib/draft/snapping/snap-point";
import { wallClearances } from "@/lib/draft/snapping/wall-clearances";
import { printLength } from "@/lib/measure/print-length";
import { capital } from "@/lib/plan/first-letter";
import { openingJambs, wallLine } from "@/lib/plan/wall-line";
import type { PlanPoint } from "@/lib/stage/frame";
import { sayPlace } from "../things/thing-words";

/** A drag of what is chosen: from where it was taken hold of to where the pointer is, plan metres. */
export type Drag = { readonly things: readonly Thing[]; readonly from: PlanPoint; readonly to: PlanPoint };

export type Dragged = { readonly edit: Edit; readonly said: string };

/**
 * The edit that a drag amounts to, and where it leads in words: a corner goes where the pencil would be caught, an opening
 * slides along its wall, everything else goes by whole steps of the grid. Null where there is nothing to move.
 */
export function editOfDrag(draft: Draft, { things, from, to }: Drag, grid: number, tolerance: number): Dragged | null {
  const { plan, units } = draft.exercise;
  const [only] = things;
  if (!only) return null;
  const print = (metres: number) => printLength(metres, units);
  if (things.length === 1 && only.kind === "corner") {
    const snapped = snapPoint(to, {
      plan: catchable(plan, to, tolerance, null),
      grid,
      tolerance,
      from: null,
      without: new Set([only.id]),
    });
    const caught = sayCaught(snapped.to);
    return {
      edit: { edit: "move-corner", id: only.id, to: snapped.at },
      said: `${only.id}: ${sayPlace(snapped.at, units)}${caught ? `; ${caught}` : ""}.`,
    };
  }
  if (things.length === 1 && only.kind === "opening") {
    const wall = plan.walls.find(({ id }) => id === only.wall);
    const opening = wall?.openings.find(({ id }) => id === only.id);
    const line = wall && wallLine(plan, wall);
    if (!wall || !opening || !line) return null;
    const { middle } = openingJambs(line, opening);
    const pointed: PlanPoint = [middle[0] + to[0] - from[0], middle[1] + to[1] - from[1]];
    const place = placeOpening(plan, wall.id, opening.width, pointed, { grid, tolerance });
    if (!place) return null;
    const clear = wallClearances(plan, wall.id, { at: place.at, width: opening.width }, opening.id);
    return {
      edit: { edit: "change-opening", wall: wall.id, id: opening.id, change: { at: place.at } },
      said: clear
        ? `${print(clear.start.length)} from ${clear.start.next.id}, ${print(clear.end.length)} from ${clear.end.next.id}.`
        : "",
    };
  }
  const steps = (by: number) => Math.round(by / grid) * grid + 0;
  const by: PlanPoint = [steps(to[0] - from[0]), steps(to[1] - from[1])];
  return { edit: { edit: "move", things, by }, said: `${capital(sayMove(by, print))}.` };
}

function sayMove([x, y]: PlanPoint, print: (metres: number) => string): string {
  const across = x === 0 ? "" : `${print(Math.abs(x))} toward stage ${x < 0 ? "right" : "left"}`;
  const along = y === 0 ? "" : `${print(Math.abs(y))} ${y < 0 ? "downstage" : "upstage"}`;
  return [across, along].filter(Boolean).join(", ") || "where it was";
}
