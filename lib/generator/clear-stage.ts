import type { Vector2 } from "../geometry/vector";
import type { Opening, Plan, Stair, Wall } from "../plan/plan";
import { type WallLine, wallLine } from "../plan/wall-line";
import type { Frame } from "./choose-frame";
import { cuts, type Outline, overlap, solidsOf, stairOutline } from "./footprint";

/** The playing space downstage centre that nothing stands in: half its width, and its depth from the plaster line, feet. */
const PLAYING_HALF_WIDTH_FT = 4;
const PLAYING_DEPTH_FT = 6;
/** Floor kept free before every way through, and before every flight, feet. */
const APPROACH_FT = 3;
/** The way across behind the set, feet. */
const CROSSOVER_FT = 2;

type Place = Pick<Frame, "stage" | "viewer" | "ruler">;

/**
 * Whether people can play on this plan: nothing stands in anything else, the playing space downstage centre is free, and
 * every door can be opened and walked through, and no window is blocked. What stands on the stage stands before the walls,
 * between the sides of the opening.
 */
export function isPlayable(plan: Plan, { stage, viewer, ruler: { foot } }: Place): boolean {
  const standing = solidsOf(plan, () => 0);
  const lines = plan.walls.flatMap((wall) => wallLine(plan, wall) ?? []);
  const walls = lines.map(({ from, to }): readonly [Vector2, Vector2] => [from, to]);
  const outlines = standing.map(({ outline }) => outline);
  const doors = doorways(plan, foot);
  const deepest = stage.depth - CROSSOVER_FT * foot;
  const half = stage.opening.width / 2;
  const eye: Vector2 = [viewer.offset, -viewer.distance];
  const beforeWalls = (spot: Vector2) => !walls.some((wall) => cuts(eye, spot, wall));
  const clearOf = (outline: Outline, others: readonly Outline[]) => !others.some((other) => overlap(outline, other));
  return (
    standing.every(
      ({ outline, low, high }, i) =>
        outline.every(
          (spot) => spot[1] > 0 && spot[1] <= stage.depth && Math.abs(spot[0]) <= half && beforeWalls(spot),
        ) &&
        clearOf(outline, walls) &&
        standing
          .slice(0, i)
          .every((other) => other.high <= low || high <= other.low || clearOf(outline, [other.outline])),
    ) &&
    lines.every(({ from, to }) => Math.max(from[1], to[1]) <= deepest) &&
    clearOf(playingSpace(foot), [...outlines, ...walls]) &&
    plan.stairs.every((stair) => clearOf(stairFoot(stair, foot), [...outlines, ...walls])) &&
    doors.every(
      ({ wall, approach, sill, leaves }, i) =>
        clearOf(
          approach,
          standing.filter(({ high }) => high > sill).map(({ outline }) => outline),
        ) &&
        leaves.every(
          (leaf) =>
            leaf.every(([, y]) => y <= stage.depth) &&
            clearOf(leaf, outlines) &&
            clearOf(
              leaf,
              plan.walls.flatMap((other, j) => (other.id === wall ? [] : [walls[j] as Outline])),
            ) &&
            clearOf(
              leaf,
              doors.slice(0, i).flatMap((other) => other.leaves),
            ),
        ),
    )
  );
}

/** The floor before a flight's lowest nosing, from which one climbs it. */
function stairFoot(stair: Stair, foot: number): Outline {
  const [first, second] = stair.nosing;
  return stairOutline({ ...stair, nosing: [second, first], steps: 1, tread: APPROACH_FT * foot });
}

/** The playing space downstage centre. */
function playingSpace(foot: number): Outline {
  const [half, deep] = [PLAYING_HALF_WIDTH_FT * foot, PLAYING_DEPTH_FT * foot];
  return [
    [-half, 0],
    [half, 0],
    [half, deep],
    [-half, deep],
  ];
}

type Doorway = {
  readonly wall: string;
  readonly approach: Outline;
  readonly sill: number;
  readonly leaves: readonly Outline[];
};

/** Every opening with the floor before it that nothing taller than its sill stands on and, of a door, the squares its leaves swing in. */
function doorways(plan: Plan, foot: number): readonly Doorway[] {
  return plan.walls.flatMap((wall) => {
    const line = wallLine(plan, wall);
    if (!line) return [];
    return wall.openings.map((opening) => ({
      wall: wall.id,
      sill: opening.sill,
      approach: beside(line, opening.at, opening.width, 0, -APPROACH_FT * foot),
      leaves: opening.kind === "door" ? swings(line, wall, opening) : [],
    }));
  });
}

/** The square a leaf swings in; two leaves, two squares. A leaf hangs on the face it swings toward. */
function swings(line: WallLine, wall: Wall, { at, width, leaves, swing }: Opening): readonly Outline[] {
  const leaf = width / leaves;
  const [face, out] = swing === "offstage" ? [wall.thickness, leaf] : [0, -leaf];
  return Array.from({ length: leaves }, (_, i) => beside(line, at + i * leaf, leaf, face, out));
}

/** An oblong beside a wall: a stretch along it, from one distance offstage of its face by another. */
function beside({ from, along, offstage }: WallLine, at: number, width: number, start: number, by: number): Outline {
  const place = (u: number, v: number): Vector2 => [
    from[0] + along[0] * u + offstage[0] * v,
    from[1] + along[1] * u + offstage[1] * v,
  ];
  return [place(at, start), place(at + width, start), place(at + width, start + by), place(at, start + by)];
}
