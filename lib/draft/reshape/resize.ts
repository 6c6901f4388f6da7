import { distance, leftOf, subtract, unit } from "../../geometry/vector";
import { INCH_M, type LengthUnits } from "../../measure/length";
import { furnitureCorners } from "../../plan/furniture-corners";
import type { Column, Furniture, Opening, Stair } from "../../plan/plan";
import type { WallLine } from "../../plan/wall-line";
import type { PlanPoint } from "../../stage/frame";
import type { Caught } from "../snapping/snap";

type By = { readonly grid: number; readonly units: LengthUnits };

/** Treads go by so much: finer than a grid, since each counts once for every riser. */
const TREAD_STEP_M: Readonly<Record<LengthUnits, number>> = { "ft-in": INCH_M / 2, m: 0.005 };

/** Furniture turns by so much, and is caught by a wall's direction within so much, radians: 5 and 3 degrees. */
export const TURN_STEP = Math.PI / 36;
const TURN_CATCH = Math.PI / 60;

/** A length by whole steps, and never none. */
function steps(length: number, step: number): number {
  return Math.max(1, Math.round(length / step)) * step;
}

/** How far a place lies from another in a direction. */
function along(from: PlanPoint, to: PlanPoint, [dx, dy]: PlanPoint): number {
  return (to[0] - from[0]) * dx + (to[1] - from[1]) * dy;
}

/**
 * A flight whose highest nosing ends at a place: its treads so deep, and its width, to the end that stays, so great. It climbs
 * the same way, by as many risers. Null for a flight of one riser or without width.
 */
export function runStair(
  { nosing, steps: risers }: Stair,
  end: number,
  to: PlanPoint,
  { grid, units }: By,
): Pick<Stair, "nosing" | "tread"> | null {
  const direction = unit(subtract(nosing[1], nosing[0]));
  if (!direction || risers < 2) return null;
  const [moves, stays] = end === 1 ? [nosing[0], nosing[1]] : [nosing[1], nosing[0]];
  const tread = steps(along(moves, to, leftOf(direction)) / (risers - 1), TREAD_STEP_M[units]);
  const away = end === 1 ? -1 : 1;
  const asked = along(stays, to, direction) * away;
  // A width that was not asked to change stays, whatever the grid.
  const width = Math.abs(asked - distance(...nosing)) < grid / 2 ? distance(...nosing) : steps(asked, grid);
  const place: PlanPoint = [stays[0] + direction[0] * width * away, stays[1] + direction[1] * width * away];
  return { nosing: end === 1 ? [place, stays] : [stays, place], tread };
}

/** Furniture with a corner brought to a place; the corner over against it stays. */
export function resizeFurniture(
  item: Furniture,
  corner: number,
  to: PlanPoint,
  { grid }: By,
): Pick<Furniture, "at" | "width" | "depth"> {
  const stays = furnitureCorners(item)[(corner + 1) % 4] as PlanPoint;
  const right: PlanPoint = [Math.cos(item.turn), Math.sin(item.turn)];
  const far = leftOf(right);
  const [onRight, onFar] = [corner === 2 || corner === 3 ? 1 : -1, corner > 2 ? 1 : -1];
  const size = (asked: number, now: number) => (Math.abs(asked - now) < grid / 2 ? now : steps(asked, grid));
  const width = size(along(stays, to, right) * onRight, item.width);
  const depth = size(along(stays, to, far) * onFar, item.depth);
  const half = (i: 0 | 1) => (right[i] * onRight * width + far[i] * onFar * depth) / 2;
  return { at: [stays[0] + half(0), stays[1] + half(1)], width, depth };
}

/** A column with its rim at a place, about the same middle. */
export function resizeColumn({ at }: Column, to: PlanPoint, { grid }: By): Pick<Column, "diameter"> {
  return { diameter: steps(2 * distance(at, to), grid) };
}

/** An opening with a jamb brought to a place of its wall; the other jamb stays. It keeps inside the wall. */
export function resizeOpening(
  opening: Opening,
  line: WallLine,
  jamb: number,
  to: PlanPoint,
  { grid }: By,
): Pick<Opening, "at" | "width"> {
  const [start, end] = [opening.at, opening.at + opening.width];
  const asked = along(line.from, to, line.along);
  if (jamb === 1) {
    const at = Math.max(0, Math.min(Math.round(asked / grid) * grid, end - Math.min(grid, opening.width)));
    return { at, width: end - at };
  }
  const stop = Math.min(line.length, Math.max(Math.round(asked / grid) * grid, start + Math.min(grid, opening.width)));
  return { at: start, width: Math.max(stop - start, Math.min(grid, opening.width)) };
}

type Turned = { readonly turn: number; readonly caught: readonly Caught[] };
type Direction = { readonly id: string; readonly along: PlanPoint };

/**
 * The turn of furniture whose front looks toward a place, counter-clockwise from the house: parallel or square to a wall where it
 * nearly is, else by whole steps. Null when the place is its middle.
 */
export function turnFurniture({ at }: Furniture, to: PlanPoint, walls: readonly Direction[]): Turned | null {
  const facing = unit(subtract(to, at));
  if (!facing) return null;
  const asked = Math.atan2(facing[0], -facing[1]);
  const quarter = Math.PI / 2;
  let best: { readonly id: string; readonly turn: number; readonly off: number } | null = null;
  for (const {
    id,
    along: [dx, dy],
  } of walls) {
    const wall = Math.atan2(dy, dx);
    const turn = wall + Math.round((asked - wall) / quarter) * quarter;
    const off = Math.abs(turn - asked);
    if (off <= TURN_CATCH && (!best || off < best.off)) best = { id, turn, off };
  }
  const level = Math.round(asked / quarter) * quarter;
  // Square to the stage needs no wall to say so.
  if (Math.abs(level - asked) <= TURN_CATCH || !best)
    return { turn: within(Math.round(asked / TURN_STEP) * TURN_STEP), caught: [] };
  return { turn: within(best.turn), caught: [{ by: "square", id: best.id }] };
}

/** An angle from above -180 to 180 degrees. */
function within(angle: number): number {
  const turns = angle - 2 * Math.PI * Math.ceil(angle / (2 * Math.PI) - 0.5);
  return turns + 0;
}
