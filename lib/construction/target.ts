import { project } from "../perspective/project";
import { topOfCorner } from "../plan/list-edges";
import { namePoints } from "../plan/name-points";
import type { NamedPoint, NamedPoints } from "../plan/named-point";
import type { Wall } from "../plan/plan";
import { sayPoint } from "../plan/say-point";
import { type WallLine, wallLine } from "../plan/wall-line";
import type { PicturePoint, StagePoint } from "../stage/frame";
import type { Sheet } from "./board";

/** A wall the target lies on, with the named points of that wall which are on the sheet already. */
export type TargetWall = {
  readonly wall: Wall;
  readonly line: WallLine;
  readonly placed: readonly PlacedPoint[];
  /** The names of the wall's four corners: foot and top at `from`, foot and top at `to`. */
  readonly corners: readonly [string, string, string, string];
};

export type PlacedPoint = {
  readonly name: string;
  readonly say: string;
  readonly stage: StagePoint;
  readonly at: PicturePoint;
};

/** What is to be constructed: a named point, or a help point with no name of its own. */
export type Target = {
  readonly name: string | null;
  readonly say: string;
  readonly at: StagePoint;
  readonly walls: readonly TargetWall[];
  /** The point straight below that it stands over, if it has one. */
  readonly over: Target | null;
};

export type Catalogue = {
  readonly points: NamedPoints;
  readonly placed: readonly PlacedPoint[];
  target(name: string): Target | null;
};

/** The named points of a board as construction targets. */
export function catalogue(board: Sheet): Catalogue {
  const points = namePoints(board.plan, board.stage);
  const placed = [...board.placed].flatMap(([name, at]) => {
    const point = points.get(name);
    return point ? [{ name, say: sayPoint(point), stage: point.at, at }] : [];
  });
  const target = (name: string): Target | null => {
    const point = points.get(name);
    if (!point) return null;
    return {
      name,
      say: sayPoint(point),
      at: point.at,
      walls: wallsOf(board, point).flatMap((wall) => targetWall(board, wall, points, placed)),
      over: point.over === null ? null : target(point.over),
    };
  };
  return { points, placed, target };
}

function wallsOf({ plan }: Sheet, { group, element }: NamedPoint): readonly Wall[] {
  if (group === "opening") return plan.walls.filter(({ id }) => id === element);
  if (group === "corner") return plan.walls.filter(({ from, to }) => from === element || to === element);
  return [];
}

function targetWall(
  board: Sheet,
  wall: Wall,
  points: NamedPoints,
  placed: readonly PlacedPoint[],
): readonly TargetWall[] {
  const line = wallLine(board.plan, wall);
  if (!line) return [];
  const corners = [
    `${wall.from}.foot`,
    topOfCorner(wall.from, wall, points),
    `${wall.to}.foot`,
    topOfCorner(wall.to, wall, points),
  ] as const;
  const own = placed.filter(({ name }) => corners.includes(name) || name.startsWith(`${wall.id}.`));
  return [{ wall, line, placed: own, corners }];
}

/** The picture of a stage point, or null behind the eye. */
export function pictureOf({ viewer }: Sheet, at: StagePoint): PicturePoint | null {
  const seen = project(viewer, at);
  return seen.seen ? seen.at : null;
}
