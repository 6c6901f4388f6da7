import { cross } from "../../../geometry/vector";
import type { Opening, Wall } from "../../../plan/plan";
import type { PlanPoint } from "../../../stage/frame";
import type { Draft, Thing } from "../../draft";
import { addOpening } from "../../edits/add-things";
import { addWalls } from "../../edits/add-walls";
import { applyEdit } from "../../edits/apply-edit";
import { changeWall } from "../../edits/change-things";
import type { Changed } from "../../edits/changed";
import type { FoundOpening } from "./found-opening";
import type { Run } from "./walk-runs";
import type { WallPiece } from "./wall-piece";

/** Heights that a plan does not tell, metres. */
export type Heights = { readonly wall: number; readonly door: number; readonly sill: number };

/** A draft with runs of walls added, what was made, and what the desk would not have, in its own sentences. */
export type Added = { readonly draft: Draft; readonly made: readonly Thing[]; readonly refused: readonly string[] };

/** Adds runs of walls with their openings to a draft. `found` has the openings of each wall, over all runs in order. */
export function addRuns(
  start: Draft,
  runs: readonly Run[],
  found: readonly (readonly FoundOpening[])[],
  heights: Heights,
): Added {
  let draft = start;
  const made: Thing[] = [];
  const refused: string[] = [];
  let next = 0;
  for (const { walls, closed } of runs) {
    const corners = [...walls.map(({ a }) => a), ...(closed ? [] : [(walls.at(-1) as WallPiece).b])];
    const whole = build(corners, closed, (walls[0] as WallPiece).thickness, []);
    for (const wall of walls) {
      const id = whole ? whole.shift() : build([wall.a, wall.b], false, wall.thickness, refused)?.[0];
      const openings = found[next++] ?? [];
      if (id !== undefined) furnish(id, wall, openings);
    }
  }
  // Marks and points are brought after the plan once, at the end, and not with each of some hundred changes.
  const settled = applyEdit(draft, { edit: "set-task", task: {}, marksBy: start.marksBy });
  return { draft: settled.ok ? settled.draft : draft, made, refused };

  function take(changed: Changed, objections: string[]): readonly Thing[] | null {
    if (changed.ok) draft = changed.draft;
    else objections.push(changed.say);
    return changed.ok ? changed.made : null;
  }

  /** The ids of the new walls, or null when the run cannot be added: its walls may still be, one by one. */
  function build(
    corners: readonly PlanPoint[],
    closed: boolean,
    thickness: number,
    objections: string[],
  ): string[] | null {
    const run = { edit: "add-walls", corners, closed, height: heights.wall, thickness } as const;
    const things = take(addWalls(draft, run), objections);
    made.push(...(things ?? []));
    return things ? things.flatMap((thing) => (thing.kind === "wall" ? [thing.id] : [])) : null;
  }

  function furnish(id: string, wall: WallPiece, openings: readonly FoundOpening[]): void {
    const onstage = isOnstageLeft(wall) ? "left" : "right";
    const added = draft.exercise.plan.walls.find((each) => each.id === id) as Wall;
    if (added.thickness !== wall.thickness || added.onstage !== onstage)
      take(changeWall(draft, { edit: "change-wall", id, change: { thickness: wall.thickness, onstage } }), refused);
    for (const found of openings) {
      const opening = asOpening(found, onstage, heights);
      made.push(...(take(addOpening(draft, { edit: "add-opening", wall: id, opening }), refused) ?? []));
    }
  }
}

function isOnstageLeft(wall: WallPiece): boolean {
  return wall.offstage !== null && cross([wall.b[0] - wall.a[0], wall.b[1] - wall.a[1]], wall.offstage) < 0;
}

function asOpening(found: FoundOpening, onstage: "left" | "right", { wall, door, sill }: Heights): Omit<Opening, "id"> {
  const head = Math.min(door, wall);
  return {
    kind: found.kind,
    at: found.start,
    width: found.end - found.start,
    sill: found.kind === "window" ? Math.min(sill, head / 2) : 0,
    head,
    depth: found.depth,
    leaves: found.leaves,
    hinge: found.hinge,
    swing: found.kind === "door" && found.left === (onstage === "left") ? "onstage" : "offstage",
  };
}
