import { SAME_POINT_M } from "../../geometry/segments-cross";
import { distance, leftOf } from "../../geometry/vector";
import { type WallLine, wallLine } from "../../plan/wall-line";
import type { PlanPoint } from "../../stage/frame";
import type { Caught, SnapContext } from "./snap";

/** A straight line that catches places. Steps along it are counted from `origin`; `along` is a unit direction. */
export type CatchingLine = {
  readonly caught: Caught;
  readonly origin: PlanPoint;
  readonly along: PlanPoint;
  /** Which of two lines that catch one place holds it: the lower. */
  readonly rank: number;
};

/** A circle about the corner drawn from: as long as another wall. */
export type CatchingCircle = { readonly caught: Caught; readonly centre: PlanPoint; readonly radius: number };

/** How far beyond its ends a wall's line still catches, metres: across a usual stage nobody means it. */
const PROLONGED_M = 6;

/** Most directions of walls that catch at once: among more, everything would be square to something. */
const MOST_DIRECTIONS = 12;

/** Sine of the angle within which two directions are one. */
const SAME_DIRECTION = 1e-6;

const RANKS = { stage: 0, wall: 1, level: 2, turned: 3, prolongation: 4 } as const;

type Standing = { readonly id: string; readonly line: WallLine };

/** The walls that stand still, with their lines. */
function standingWalls({ plan, without }: SnapContext): readonly Standing[] {
  return plan.walls.flatMap((wall) => {
    const line = without.has(wall.from) || without.has(wall.to) ? null : wallLine(plan, wall);
    return line ? [{ id: wall.id, line }] : [];
  });
}

/** Lines within the tolerance of a place, nearest of each rank first. */
export function catchingLines(at: PlanPoint, context: SnapContext, within: number): readonly CatchingLine[] {
  const walls = standingWalls(context);
  const lines: CatchingLine[] = [
    { caught: { by: "centre line" }, origin: [0, 0], along: [0, 1], rank: RANKS.stage },
    { caught: { by: "plaster line" }, origin: [0, 0], along: [1, 0], rank: RANKS.stage },
    ...walls.flatMap((wall) => wallOrProlongation(wall, at)),
    ...(context.from ? directionsFrom(context.from, walls) : []),
    ...(context.beside ?? []).flatMap(levelAndUpstage),
  ];
  return lines
    .map((line) => ({ line, off: offLine(line, at) }))
    .filter(({ off }) => off <= within)
    .sort((a, b) => a.line.rank - b.line.rank || a.off - b.off)
    .map(({ line }) => line);
}

/** The wall's own line where the place lies beside it, its prolongation from the nearer end where it lies beyond. */
function wallOrProlongation({ id, line }: Standing, at: PlanPoint): readonly CatchingLine[] {
  const { from, to, along, length } = line;
  const t = (at[0] - from[0]) * along[0] + (at[1] - from[1]) * along[1];
  if (t < -PROLONGED_M || t > length + PROLONGED_M) return [];
  if (t >= 0 && t <= length) return [{ caught: { by: "wall", id }, origin: from, along, rank: RANKS.wall }];
  const end = t < 0 ? from : to;
  return [{ caught: { by: "prolongation", id }, origin: end, along, rank: RANKS.prolongation }];
}

function levelAndUpstage(from: PlanPoint): readonly CatchingLine[] {
  return [
    { caught: { by: "across" }, origin: from, along: [1, 0], rank: RANKS.level },
    { caught: { by: "upstage" }, origin: from, along: [0, 1], rank: RANKS.level },
  ];
}

/** Lines through the corner drawn from: level, straight upstage, and parallel and square to the walls, those that meet there first. */
function directionsFrom(from: PlanPoint, walls: readonly Standing[]): readonly CatchingLine[] {
  const lines: CatchingLine[] = [...levelAndUpstage(from)];
  const meeting = ({ line }: Standing) =>
    distance(line.from, from) < SAME_POINT_M || distance(line.to, from) < SAME_POINT_M;
  for (const { id, line } of [...walls.filter(meeting), ...walls.filter((wall) => !meeting(wall))]) {
    if (lines.length >= 2 * MOST_DIRECTIONS) break;
    if (lines.some(({ along }) => Math.abs(along[0] * line.along[1] - along[1] * line.along[0]) < SAME_DIRECTION))
      continue;
    lines.push(
      { caught: { by: "square", id }, origin: from, along: leftOf(line.along), rank: RANKS.turned },
      { caught: { by: "parallel", id }, origin: from, along: line.along, rank: RANKS.turned },
    );
  }
  return lines;
}

/** How far a place lies from a line, metres. */
function offLine({ origin, along }: CatchingLine, at: PlanPoint): number {
  return Math.abs((at[0] - origin[0]) * along[1] - (at[1] - origin[1]) * along[0]);
}

/** Circles about the corner drawn from that pass within the tolerance of a place, one for each length. */
export function catchingCircles(at: PlanPoint, context: SnapContext, within: number): readonly CatchingCircle[] {
  const { from } = context;
  if (!from) return [];
  const reach = distance(from, at);
  return standingWalls(context)
    .filter(({ line }) => Math.abs(line.length - reach) <= within)
    .sort((a, b) => Math.abs(a.line.length - reach) - Math.abs(b.line.length - reach))
    .map(({ id, line }) => ({ caught: { by: "equal length", id }, centre: from, radius: line.length }));
}
