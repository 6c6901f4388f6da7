import { distanceToSegment } from "../../geometry/segments-cross";
import { between, cross, distance, leftOf, subtract, unit } from "../../geometry/vector";
import type { Plan, Platform } from "../../plan/plan";
import { platformTop, surfaceLevel } from "../../plan/surface-level";
import { wallLine } from "../../plan/wall-line";
import type { PlanPoint } from "../../stage/frame";
import type { Stage } from "../../stage/stage";
import { solidPieces } from "./solid-pieces";

/** A drop over this wants a guard, metres: 30 in (IBC 1015.2, from memory). */
export const GUARD_DROP_M = 0.762;
/** A wall beside the edge stands for a guard when it rises this far above the platform, metres: 42 in (IBC 1015.3, from memory). */
const GUARD_HEIGHT_M = 1.0668;
/** How far outside an edge the drop is looked for, and how near a wall must stand, metres. */
const PROBE_M = 0.05;
const WALL_REACH_M = 0.15;
/** A wall runs along an edge when the sine of the angle between them is under this: 30 degrees. */
const BESIDE_SINE = 0.5;
/** An edge is looked at in pieces of about this length, metres. */
const PIECE_M = 0.15;

/** A stretch of a platform's edge; `inward` is the unit direction back on to the platform. */
export type Drop = { readonly from: PlanPoint; readonly to: PlanPoint; readonly inward: PlanPoint };

/**
 * The stretches of a platform's edges from which it drops more than 30 in with no wall to stop a fall. A reminder on a
 * teaching drawing: local codes and licensed practice decide where a guard must stand.
 */
export function findDrops(plan: Plan, platform: Platform, stage: Pick<Stage, "rake">): readonly Drop[] {
  const top = platformTop(platform, stage);
  const turn = Math.sign(doubleArea(platform.outline));
  return platform.outline.flatMap((a, i) => {
    const b = platform.outline[(i + 1) % platform.outline.length] as PlanPoint;
    const along = unit(subtract(b, a));
    if (!along || turn === 0) return [];
    const left = leftOf(along);
    const inward: PlanPoint = [left[0] * turn, left[1] * turn];
    const pieces = Math.max(1, Math.round(distance(a, b) / PIECE_M));
    const open = Array.from({ length: pieces }, (_, k) => {
      const middle = between(a, b, (k + 0.5) / pieces);
      const outside: PlanPoint = [middle[0] - inward[0] * PROBE_M, middle[1] - inward[1] * PROBE_M];
      return top - surfaceLevel(plan, stage, outside, platform) > GUARD_DROP_M && !walled(plan, middle, along, top);
    });
    return runs(open).map(([first, last]) => ({
      from: between(a, b, first / pieces),
      to: between(a, b, last / pieces),
      inward,
    }));
  });
}

/** Whether a wall high enough runs along the edge there; one that only meets the edge guards nothing. */
function walled(plan: Plan, at: PlanPoint, along: PlanPoint, top: number): boolean {
  return plan.walls.some((wall) => {
    const line = wallLine(plan, wall);
    if (!line || wall.base + wall.height < top + GUARD_HEIGHT_M) return false;
    if (Math.abs(cross(along, line.along)) > BESIDE_SINE) return false;
    return solidPieces(wall, line.length).some(
      ([start, end]) =>
        distanceToSegment(at, [
          between(line.from, line.to, start / line.length),
          between(line.from, line.to, end / line.length),
        ]) <
        WALL_REACH_M + wall.thickness,
    );
  });
}

/** Runs of true, as half-open ranges. */
function runs(flags: readonly boolean[]): (readonly [first: number, last: number])[] {
  const found: (readonly [number, number])[] = [];
  let start = -1;
  [...flags, false].forEach((flag, i) => {
    if (flag && start < 0) start = i;
    if (!flag && start >= 0) {
      found.push([start, i]);
      start = -1;
    }
  });
  return found;
}

/** Twice the signed area of an outline: positive when it runs counter-clockwise. */
function doubleArea(outline: readonly PlanPoint[]): number {
  return outline.reduce((sum, p, i) => sum + cross(p, outline[(i + 1) % outline.length] as PlanPoint), 0);
}
