import { meet } from "../../geometry/meet";
import { SAME_POINT_M } from "../../geometry/segments-cross";
import { distance } from "../../geometry/vector";
import type { PlanPoint } from "../../stage/frame";
import { type CatchingCircle, type CatchingLine, catchingCircles, catchingLines } from "./catching-lines";
import { type Caught, EXACT_M, type Guide, type SnapContext, type Snapped } from "./snap";

/** Lines that are tried in pairs; the nearest of more are as good. */
const MOST_LINES = 8;

/** A crossing of two lines that each lie within the tolerance may lie so much farther off. */
const CROSSING_REACH = 1.5;

/**
 * Where a place of the plan goes that was pointed at, by mouse or finger, or stepped to by keys: to a corner or its mirror
 * image across the centre line; to where two lines that catch it cross; on to one such line, by the grid's steps along it; to
 * the grid; or nowhere else. Plan metres.
 */
export function snapPoint(at: PlanPoint, context: SnapContext): Snapped {
  const within = Math.max(context.tolerance, EXACT_M);
  return (
    snapToCorner(at, context, within) ??
    snapToLines(at, context, within) ??
    snapToGrid(at, context, within) ?? { at, to: [], guides: [] }
  );
}

function snapToCorner(at: PlanPoint, context: SnapContext, within: number): Snapped | null {
  const { plan, without } = context;
  const corners = [...plan.corners].filter(([name, corner]) => !without.has(name) && !isStart(corner, context));
  const corner = nearest(corners, at, within);
  if (corner) return { at: corner.at, to: [{ by: "corner", id: corner.name }], guides: [] };
  const mirrored = corners.map(([name, [x, y]]) => [name, [0 - x, y] as PlanPoint] as const);
  const image = nearest(mirrored, at, within);
  if (!image) return null;
  const real = plan.corners.get(image.name) as PlanPoint;
  return {
    at: image.at,
    to: [{ by: "mirror image", of: image.name }],
    guides: [{ by: "mirror image", from: real, to: image.at }],
  };
}

/** Nothing is drawn from a corner to itself. */
function isStart(at: PlanPoint, { from }: SnapContext): boolean {
  return from !== null && distance(at, from) < SAME_POINT_M;
}

function nearest(named: readonly (readonly [string, PlanPoint])[], to: PlanPoint, within: number) {
  let best: { readonly name: string; readonly at: PlanPoint; readonly off: number } | null = null;
  for (const [name, at] of named) {
    const off = distance(at, to);
    if (off <= within && (!best || off < best.off)) best = { name, at, off };
  }
  return best;
}

function snapToLines(at: PlanPoint, context: SnapContext, within: number): Snapped | null {
  const lines = catchingLines(at, context, within).slice(0, MOST_LINES);
  const circles = catchingCircles(at, context, within).slice(0, 1);
  const reach = within * CROSSING_REACH;
  const crossings = [
    ...lines.flatMap((one, i) => lines.slice(i + 1).flatMap((other) => crossLines(one, other))),
    ...lines.flatMap((line) => circles.flatMap((circle) => crossCircle(line, circle))),
  ].filter((crossing) => distance(crossing.at, at) <= reach && !isStart(crossing.at, context));
  const crossing = crossings.sort((a, b) => a.rank - b.rank || distance(a.at, at) - distance(b.at, at))[0];
  if (crossing) return held(crossing.at, crossing.held);
  const line = lines[0];
  const grid = stepsOf(context);
  if (line) return held(alongLine(line, at, grid), [line]);
  const circle = circles[0];
  return circle && grid === null ? held(ontoCircle(circle, at), [circle]) : null;
}

type Held = CatchingLine | CatchingCircle;
type Crossing = { readonly at: PlanPoint; readonly held: readonly Held[]; readonly rank: number };

function crossLines(one: CatchingLine, other: CatchingLine): readonly Crossing[] {
  const at = meet([one.origin, ahead(one, 1)], [other.origin, ahead(other, 1)]);
  return at ? [{ at, held: [one, other], rank: one.rank + other.rank }] : [];
}

/** A length that is as another's ranks behind all crossings of lines. */
const CIRCLE_RANK = 10;

function crossCircle(line: CatchingLine, circle: CatchingCircle): readonly Crossing[] {
  const { origin, along, rank } = line;
  const [x, y] = [circle.centre[0] - origin[0], circle.centre[1] - origin[1]];
  const middle = x * along[0] + y * along[1];
  const square = circle.radius ** 2 - (x * x + y * y - middle * middle);
  if (square < 0) return [];
  const half = Math.sqrt(square);
  return [middle - half, middle + half].map((t) => ({
    at: ahead(line, t),
    held: [line, circle],
    rank: CIRCLE_RANK + rank,
  }));
}

function ahead({ origin, along }: CatchingLine, t: number): PlanPoint {
  return [origin[0] + along[0] * t, origin[1] + along[1] * t];
}

/** The place on a line nearest to another, by whole steps from the line's origin where there is a grid. */
function alongLine(line: CatchingLine, at: PlanPoint, grid: number | null): PlanPoint {
  const { origin, along } = line;
  const t = (at[0] - origin[0]) * along[0] + (at[1] - origin[1]) * along[1];
  return ahead(line, grid === null ? t : Math.round(t / grid) * grid);
}

function ontoCircle({ centre, radius }: CatchingCircle, at: PlanPoint): PlanPoint {
  const reach = distance(centre, at);
  if (!(reach > 0)) return at;
  return [centre[0] + ((at[0] - centre[0]) * radius) / reach, centre[1] + ((at[1] - centre[1]) * radius) / reach];
}

function held(at: PlanPoint, by: readonly Held[]): Snapped {
  const guides = by
    .filter(({ caught }) => caught.by !== "wall")
    .map((one): Guide => ({ by: one.caught.by, from: "origin" in one ? one.origin : one.centre, to: at }));
  return { at, to: by.map(({ caught }): Caught => caught), guides };
}

/** The grid that moves places: none for keys, which have made their step already. */
function stepsOf({ grid, tolerance }: SnapContext): number | null {
  return tolerance > 0 ? grid : null;
}

function snapToGrid(at: PlanPoint, context: SnapContext, within: number): Snapped | null {
  const { grid } = context;
  if (grid === null) return null;
  const onGrid = (value: number) => Math.round(value / grid) * grid + 0;
  const place: PlanPoint = [onGrid(at[0]), onGrid(at[1])];
  if (stepsOf(context) === null && distance(place, at) > within) return null;
  return { at: place, to: [{ by: "grid" }], guides: [] };
}
