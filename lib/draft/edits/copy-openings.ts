import { distanceToSegment, SAME_POINT_M } from "../../geometry/segments-cross";
import { subtract } from "../../geometry/vector";
import type { Opening, Plan, Wall } from "../../plan/plan";
import { openingJambs, type WallLine, wallLine } from "../../plan/wall-line";
import type { PlanPoint } from "../../stage/frame";
import type { Thing } from "../draft";
import { type Refused, refuse } from "./changed";
import { kindNames } from "./names";
import { mirrorOpening, type Placing } from "./placing";
import type { Selection } from "./selection";

export type OpeningCopies = {
  readonly ok: true;
  /** All the walls, with the copies in them. */
  readonly walls: readonly Wall[];
  readonly made: readonly Thing[];
};

/**
 * Copies of openings chosen without their wall: moved on along the same wall, or mirrored into the wall that stands where
 * their mirror image is.
 */
export function copyOpenings(plan: Plan, selection: Selection, placing: Placing): OpeningCopies | Refused {
  const made: Thing[] = [];
  let walls = plan.walls;
  for (const wall of plan.walls) {
    const line = wallLine(plan, wall);
    const chosen = selection.walls.has(wall.id) ? undefined : selection.openings.get(wall.id);
    if (!chosen || !line) continue;
    for (const opening of wall.openings.filter(({ id }) => chosen.has(id))) {
      const put = placing.mirrors ? mirrorInto(plan, opening, line, placing) : slideOn(wall, opening, line, placing);
      if (!put)
        return refuse(`No wall stands where the mirror image of "${opening.id}" would be. Mirror its wall first.`);
      const host = walls.find(({ id }) => id === put.wall) as Wall;
      if (host.openings.some(({ at, width }) => at === put.opening.at && width === put.opening.width)) continue;
      const id = kindNames(opening.kind, new Set(host.openings.map((other) => other.id))).next().value;
      const widened = { ...host, openings: [...host.openings, { ...put.opening, id }] };
      walls = walls.map((other) => (other.id === host.id ? widened : other));
      made.push({ kind: "opening", wall: host.id, id });
    }
  }
  return { ok: true, walls, made };
}

type Put = { readonly wall: string; readonly opening: Opening };

function slideOn(wall: Wall, opening: Opening, line: WallLine, { place }: Placing): Put {
  const { start } = openingJambs(line, opening);
  return { wall: wall.id, opening: { ...opening, at: reckon(line, place(start)) } };
}

function mirrorInto(plan: Plan, opening: Opening, line: WallLine, { place }: Placing): Put | null {
  const jambs = openingJambs(line, opening);
  const [start, end] = [place(jambs.end), place(jambs.start)];
  for (const wall of plan.walls) {
    const host = wallLine(plan, wall);
    if (!host || [start, end].some((jamb) => distanceToSegment(jamb, [host.from, host.to]) > SAME_POINT_M)) continue;
    const [first, last] = [reckon(host, start), reckon(host, end)];
    // Along a wall that runs as the mirrored one would, the jambs have changed ends; along one that runs against it, not.
    const turned = first <= last ? mirrorOpening(opening, line, host) : opening;
    return { wall: wall.id, opening: { ...turned, at: Math.min(first, last) } };
  }
  return null;
}

/** How far along a wall's line a place lies, from its `from` corner. */
function reckon({ from, along }: WallLine, at: PlanPoint): number {
  const [x, y] = subtract(at, from);
  return x * along[0] + y * along[1];
}
