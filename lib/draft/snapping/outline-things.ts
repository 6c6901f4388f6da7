import { leftOf, subtract, unit } from "../../geometry/vector";
import { furnitureCorners } from "../../plan/furniture-corners";
import type { Plan, Stair, Wall } from "../../plan/plan";
import { openingJambs, type WallLine, wallLine } from "../../plan/wall-line";
import type { PlanPoint } from "../../stage/frame";
import type { Thing } from "../draft";

/** What a thing covers of the plan: a place, a line, or an outline, with a radius about it. */
export type ThingShape = {
  readonly thing: Thing;
  readonly ring: readonly PlanPoint[];
  readonly radius: number;
  /** Of two things at one place the lower is meant. */
  readonly rank: number;
  readonly area: number;
};

const RANKS = { corner: 0, opening: 1, wall: 2, masking: 3, standing: 4, platform: 5 } as const;

/** The shapes of all things of a plan that have a place. */
export function outlineThings(plan: Plan): readonly ThingShape[] {
  return [
    ...[...plan.corners].map(([id, at]) => shape({ kind: "corner", id }, [at], RANKS.corner)),
    ...plan.walls.flatMap((wall) => outlineWall(plan, wall)),
    ...plan.masking.map(({ id, line }) => shape({ kind: "masking", id }, line, RANKS.masking)),
    ...plan.columns.map(({ id, at, diameter }) => shape({ kind: "column", id }, [at], RANKS.standing, diameter / 2)),
    ...plan.furniture.map((item) => shape({ kind: "furniture", id: item.id }, furnitureCorners(item), RANKS.standing)),
    ...plan.stairs.map((stair) => shape({ kind: "stair", id: stair.id }, outlineStair(stair), RANKS.standing)),
    ...plan.platforms.map(({ id, outline }) => shape({ kind: "platform", id }, outline, RANKS.platform)),
  ].filter(({ ring }) => ring.length > 0 && ring.flat().every(Number.isFinite));
}

function shape(thing: Thing, ring: readonly PlanPoint[], rank: number, radius = 0): ThingShape {
  const twice = ring.reduce((sum, [x, y], i) => {
    const [u, v] = ring[(i + 1) % ring.length] as PlanPoint;
    return sum + x * v - u * y;
  }, 0);
  return { thing, ring, rank, radius, area: Math.abs(twice) / 2 + Math.PI * radius ** 2 };
}

/** A wall with its thickness offstage of the drawn line, and its openings cut out of the same band. */
function outlineWall(plan: Plan, wall: Wall): readonly ThingShape[] {
  const line = wallLine(plan, wall);
  if (!line) return [];
  const openings = wall.openings.map((opening) => {
    const { start, end } = openingJambs(line, opening);
    const thing: Thing = { kind: "opening", wall: wall.id, id: opening.id };
    return shape(thing, band(line, start, end, Math.max(wall.thickness, opening.depth ?? 0)), RANKS.opening);
  });
  return [
    ...openings,
    shape({ kind: "wall", id: wall.id }, band(line, line.from, line.to, wall.thickness), RANKS.wall),
  ];
}

function band({ offstage }: WallLine, from: PlanPoint, to: PlanPoint, thickness: number): readonly PlanPoint[] {
  if (thickness === 0) return [from, to];
  const out = ([x, y]: PlanPoint): PlanPoint => [x + offstage[0] * thickness, y + offstage[1] * thickness];
  return [from, to, out(to), out(from)];
}

/** A flight from its lowest nosing back over all its treads. */
function outlineStair({ nosing: [first, second], steps, tread }: Stair): readonly PlanPoint[] {
  const along = unit(subtract(second, first));
  if (!along) return [first];
  const [dx, dy] = leftOf(along);
  const back = ([x, y]: PlanPoint): PlanPoint => [x + dx * steps * tread, y + dy * steps * tread];
  return [first, second, back(second), back(first)];
}
