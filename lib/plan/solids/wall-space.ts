import type { Vector3 } from "../../geometry/matrix3";
import type { PlanPoint, StagePoint } from "../../stage/frame";
import { floorHeight, type Stage } from "../../stage/stage";
import type { Opening, Plan, Wall } from "../plan";
import { openingJambs, type WallLine, wallLine } from "../wall-line";

/**
 * A wall's own frame: `u` metres along its drawn line from its `from` corner, `v` metres offstage of its drawn face, and the
 * stage's heights.
 */
export type WallSpace = {
  readonly wall: Wall;
  readonly line: WallLine;
  readonly top: number;
  readonly along: Vector3;
  readonly offstage: Vector3;
  readonly at: (u: number, v: number, z: number) => StagePoint;
  /** Height of the floor the wall stands on, at a place. */
  readonly foot: (u: number, v: number) => number;
  /** The foot from one place to another, with a point where a raked floor bends between them. */
  readonly footPath: (from: UV, to: UV) => readonly StagePoint[];
};

export type UV = readonly [u: number, v: number];

/** Null where the wall has no line: a corner is missing, both are one point, or it has no height. */
export function wallSpace(plan: Pick<Plan, "corners">, wall: Wall, stage: Pick<Stage, "rake">): WallSpace | null {
  const line = wallLine(plan, wall);
  if (!line || !(wall.height > 0)) return null;
  const place = (u: number, v: number): PlanPoint => {
    // The far corner's own coordinates, so that walls that meet there share them to the last digit.
    const [x, y] = u === line.length ? line.to : [line.from[0] + line.along[0] * u, line.from[1] + line.along[1] * u];
    return [x + line.offstage[0] * v, y + line.offstage[1] * v];
  };
  const at = (u: number, v: number, z: number): StagePoint => {
    const [x, y] = place(u, v);
    return [x, y, z];
  };
  const foot = (u: number, v: number) => floorHeight(stage, place(u, v)[1]) + wall.base;
  const footPath = ([u0, v0]: UV, [u1, v1]: UV): readonly StagePoint[] => {
    const [a, b] = [at(u0, v0, foot(u0, v0)), at(u1, v1, foot(u1, v1))];
    if (stage.rake === 0 || a[1] * b[1] >= 0) return [a, b];
    const share = a[1] / (a[1] - b[1]);
    return [a, [a[0] + (b[0] - a[0]) * share, 0, wall.base], b];
  };
  return {
    wall,
    line,
    top: wall.height + wall.base,
    along: [line.along[0], line.along[1], 0],
    offstage: [line.offstage[0], line.offstage[1], 0],
    at,
    foot,
    footPath,
  };
}

/** Height of the floor under the middle of an opening, from which its sill and head are measured. */
export function openingGround({ wall, line }: WallSpace, stage: Pick<Stage, "rake">, opening: Opening): number {
  return floorHeight(stage, openingJambs(line, opening).middle[1]) + wall.base;
}
