import { stairOutline } from "../../generator/footprint";
import { type Interval, without } from "../../geometry/intervals";
import { furnitureCorners } from "../../plan/furniture-corners";
import { mitreWall } from "../../plan/mitre-wall";
import type { Masking, Plan, Wall } from "../../plan/plan";
import { curvePieces } from "../../plan/solids/curve-pieces";
import { stairNosings } from "../../plan/stair-nosings";
import { platformTop } from "../../plan/surface-level";
import { openingJambs, placeOnWall, type WallLine, wallLine } from "../../plan/wall-line";
import type { PlanPoint } from "../../stage/frame";
import { floorHeight, type Stage } from "../../stage/stage";
import type { Thing } from "../draft";

/**
 * Something that fills a part of the stage: an outline in the plan (two points stand for a cloth or a flat without thickness),
 * and from which height to which, metres above the stage floor at the plaster line.
 */
export type Body = {
  readonly thing: Thing;
  readonly outline: readonly PlanPoint[];
  readonly low: number;
  readonly high: number;
};

type Floor = Pick<Stage, "rake">;

/** What stands or hangs on the stage, walls apart. */
export function standingBodies(plan: Plan, stage: Floor): readonly Body[] {
  const floor = (y: number) => floorHeight(stage, y);
  return [
    ...plan.platforms.map((platform): Body => {
      const low = floor(platform.outline[0]?.[1] ?? 0) + platform.base;
      return {
        thing: { kind: "platform", id: platform.id },
        outline: platform.outline,
        low,
        high: platformTop(platform, stage),
      };
    }),
    ...plan.stairs.flatMap((stair) =>
      stairNosings(stair, stage).map(({ start, end }): Body => {
        const nosing = [
          [start[0], start[1]],
          [end[0], end[1]],
        ] as const;
        const outline = stairOutline({ ...stair, steps: 1, nosing });
        return {
          thing: { kind: "stair", id: stair.id },
          outline,
          low: floor(stair.nosing[0][1]) + stair.base,
          high: start[2],
        };
      }),
    ),
    ...plan.furniture.map((item): Body => {
      const low = floor(item.at[1]) + item.base;
      return {
        thing: { kind: "furniture", id: item.id },
        outline: furnitureCorners(item),
        low,
        high: low + item.height,
      };
    }),
    ...plan.columns.map(({ id, at, diameter, base, height }): Body => {
      const low = floor(at[1]) + base;
      return { thing: { kind: "column", id }, outline: roundOutline(at, diameter / 2), low, high: low + height };
    }),
    ...plan.masking.map(
      (cloth): Body => ({ thing: { kind: "masking", id: cloth.id }, outline: cloth.line, ...clothHeights(cloth) }),
    ),
  ];
}

/** From which height to which a cloth hangs; a leg or backing from the floor, wherever that is. */
export function clothHeights({ trim, height }: Masking): { readonly low: number; readonly high: number } {
  return trim === null ? { low: 0, high: height } : { low: trim, high: trim + height };
}

function roundOutline([x, y]: PlanPoint, radius: number): readonly PlanPoint[] {
  const pieces = curvePieces(radius);
  return Array.from({ length: pieces }, (_, i): PlanPoint => {
    const angle = (2 * Math.PI * i) / pieces;
    return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)];
  });
}

/** A wall with its drawn line and where its offstage face ends, worked out once. */
export type PlacedWall = {
  readonly wall: Wall;
  readonly line: WallLine;
  readonly backs: { readonly from: PlanPoint; readonly to: PlanPoint };
};

export function placeWalls(plan: Plan): readonly PlacedWall[] {
  return plan.walls.flatMap((wall): readonly PlacedWall[] => {
    const line = wallLine(plan, wall);
    if (!line) return [];
    const back = (end: "from" | "to") => mitreWall(plan, wall, line, end).at;
    const thin = wall.thickness === 0;
    return [{ wall, line, backs: thin ? line : { from: back("from"), to: back("to") } }];
  });
}

/** The pieces of a wall that something from one height to another cannot pass: all but the openings high and low enough. */
export function wallBodies(
  { wall, line, backs }: PlacedWall,
  stage: Floor,
  low: number,
  high: number,
): readonly Body[] {
  const ways = wall.openings
    .filter(({ kind }) => kind !== "niche")
    .flatMap((opening): readonly Interval[] => {
      const ground = floorHeight(stage, openingJambs(line, opening).middle[1]) + wall.base;
      const clear = ground + opening.sill <= low + TOUCH_M && high <= ground + opening.head + TOUCH_M;
      return clear ? [[opening.at, opening.at + opening.width]] : [];
    });
  const back = (at: number): PlanPoint => {
    const [x, y] = placeOnWall(line, at);
    return [x + line.offstage[0] * wall.thickness, y + line.offstage[1] * wall.thickness];
  };
  return without([0, line.length], ways).map(([start, end]): Body => {
    const face = [placeOnWall(line, start), placeOnWall(line, end)];
    const behind = [end === line.length ? backs.to : back(end), start === 0 ? backs.from : back(start)];
    const outline = wall.thickness > 0 ? [...face, ...behind] : face;
    return { thing: { kind: "wall", id: wall.id }, outline, low: wall.base, high: wall.base + wall.height };
  });
}

/** What overlaps by less than this only touches, metres. */
export const TOUCH_M = 0.005;

/** Whether two things share some height. */
export function shareHeight(a: Pick<Body, "low" | "high">, b: Pick<Body, "low" | "high">): boolean {
  return a.low < b.high - TOUCH_M && b.low < a.high - TOUCH_M;
}
