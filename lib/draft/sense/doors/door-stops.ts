import type { Opening, Plan, Wall } from "../../../plan/plan";
import { openingJambs, type WallLine } from "../../../plan/wall-line";
import type { PlanPoint } from "../../../stage/frame";
import type { Stage } from "../../../stage/stage";
import type { Thing } from "../../draft";
import { type Body, type PlacedWall, placeWalls, shareHeight, standingBodies, TOUCH_M, wallBodies } from "../bodies";
import { type Leaf, leavesOf, sweepOf } from "./leaf";
import { stopAngle } from "./stop-angle";

/** A leaf that opens to within this of a right angle is open, radians: 1 degree. */
const OPEN_ENOUGH = Math.PI / 2 - Math.PI / 180;

/** A door is moved no farther along its wall to free it, metres. */
export const FARTHEST_MOVED_M = 1;

/** A mitred end reaches no farther from the drawn line than this many thicknesses (see `mitreWall`). */
const MITRED = 4;

/** What keeps a leaf from opening to a right angle, and how far it opens, radians; `thing` null is the stage's back wall. */
export type Stop = { readonly thing: Thing | null; readonly angle: number };

/** A door as it hangs in its wall. */
export type Door = {
  readonly wall: Wall;
  readonly line: WallLine;
  readonly opening: Opening;
  readonly leaves: readonly Leaf[];
};

/** All that doors may meet on a stage, gathered once. */
export type Room = {
  readonly stage: Stage;
  readonly standing: readonly Body[];
  readonly walls: readonly PlacedWall[];
};

export function gatherRoom(plan: Plan, stage: Stage): Room {
  return { stage, standing: standingBodies(plan, stage), walls: placeWalls(plan) };
}

export function doorsOf({ walls, stage }: Room): readonly Door[] {
  return walls.flatMap(({ wall, line }) =>
    wall.openings
      .filter(({ kind }) => kind === "door")
      .map((opening) => ({ wall, line, opening, leaves: leavesOf(wall, line, opening, stage) })),
  );
}

/** All that the leaves of a door may meet, wherever it is moved and however it is hung. */
export function bodiesNear({ stage, standing, walls }: Room, door: Door): readonly Body[] {
  const { middle } = openingJambs(door.line, door.opening);
  const reach = 2 * door.opening.width + door.wall.thickness + FARTHEST_MOVED_M;
  const leaf = door.leaves[0];
  if (!leaf) return [];
  return [
    ...standing.filter((body) => shareHeight(leaf, body) && reaches(body.outline, middle, reach)),
    ...walls
      .filter(
        ({ wall, line }) =>
          wall !== door.wall && reaches([line.from, line.to], middle, reach + MITRED * wall.thickness),
      )
      .flatMap((placed) => wallBodies(placed, stage, leaf.low, leaf.high))
      .filter((body) => shareHeight(leaf, body)),
  ];
}

/** Whether an outline's extent comes within so far of a place, along each axis. */
function reaches(outline: readonly PlanPoint[], place: PlanPoint, reach: number): boolean {
  for (const axis of [0, 1] as const) {
    let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
    for (const corner of outline) {
      low = Math.min(low, corner[axis]);
      high = Math.max(high, corner[axis]);
    }
    if (low > place[axis] + reach || high < place[axis] - reach) return false;
  }
  return true;
}

/** What leaves meet of some bodies before they stand open, the soonest first; other doors' leaves apart. */
export function leafStops(
  leaves: readonly Leaf[],
  bodies: readonly Body[],
  stage: Pick<Stage, "depth">,
): readonly Stop[] {
  const stops = leaves.flatMap((leaf) => {
    const wall = backWallAngle(leaf, stage);
    return [
      ...bodies.flatMap(({ thing, outline }): readonly Stop[] => {
        const angle = meetingAngle(leaf, outline);
        return angle === null ? [] : [{ thing, angle }];
      }),
      ...(wall === null ? [] : [{ thing: null, angle: wall }]),
    ];
  });
  return stops.sort((a, b) => a.angle - b.angle);
}

/** Whether leaves open to a right angle clear of some bodies. */
export function opensClear(leaves: readonly Leaf[], bodies: readonly Body[], stage: Pick<Stage, "depth">): boolean {
  return leaves.every(
    (leaf) =>
      backWallAngle(leaf, stage) === null && bodies.every(({ outline }) => meetingAngle(leaf, outline) === null),
  );
}

function meetingAngle(leaf: Leaf, outline: readonly PlanPoint[]): number | null {
  const angle = reaches(outline, leaf.pivot, leaf.width) ? stopAngle(leaf, outline) : null;
  return angle !== null && angle < OPEN_ENOUGH ? angle : null;
}

function backWallAngle(leaf: Leaf, { depth }: Pick<Stage, "depth">): number | null {
  if (leaf.pivot[1] + leaf.width <= depth + TOUCH_M || leaf.pivot[1] > depth) return null;
  const [left, right] = [leaf.pivot[0] - 2 * leaf.width, leaf.pivot[0] + 2 * leaf.width];
  return meetingAngle(leaf, [
    [left, depth],
    [right, depth],
  ]);
}

/** Whether leaves of two doors sweep over one place: only one of the two can stand open. */
export function sweepsMeet(one: Pick<Door, "leaves">, other: Pick<Door, "leaves">): boolean {
  return one.leaves.some((leaf) =>
    other.leaves.some(
      (second) =>
        Math.hypot(leaf.pivot[0] - second.pivot[0], leaf.pivot[1] - second.pivot[1]) < leaf.width + second.width &&
        shareHeight(leaf, second) &&
        stopAngle(leaf, sweepOf(second)) !== null,
    ),
  );
}
