import { distanceToSegment } from "../../../geometry/segments-cross";
import type { Opening, Plan, Wall } from "../../../plan/plan";
import { type WallLine, wallLine } from "../../../plan/wall-line";
import type { PlanPoint } from "../../../stage/frame";
import type { Stage } from "../../../stage/stage";
import type { Thing } from "../../draft";
import { type Body, shareHeight, standingBodies, TOUCH_M, wallBodies } from "../bodies";
import { type Leaf, leavesOf, sweepOf } from "./leaf";
import { stopAngle } from "./stop-angle";

/** A leaf that opens to within this of a right angle is open, radians: 1 degree. */
const OPEN_ENOUGH = Math.PI / 2 - Math.PI / 180;

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
  readonly plan: Plan;
  readonly stage: Stage;
  readonly standing: readonly Body[];
  readonly walls: readonly { readonly wall: Wall; readonly line: WallLine }[];
};

export function gatherRoom(plan: Plan, stage: Stage): Room {
  const walls = plan.walls.flatMap((wall) => {
    const line = wallLine(plan, wall);
    return line ? [{ wall, line }] : [];
  });
  return { plan, stage, standing: standingBodies(plan, stage), walls };
}

export function doorsOf({ walls, stage }: Room): readonly Door[] {
  return walls.flatMap(({ wall, line }) =>
    wall.openings
      .filter(({ kind }) => kind === "door")
      .map((opening) => ({ wall, line, opening, leaves: leavesOf(wall, line, opening, stage) })),
  );
}

/** What each leaf of a door meets before it stands open, the soonest first; other doors' leaves apart. */
export function doorStops(room: Room, door: Pick<Door, "wall" | "leaves">): readonly Stop[] {
  const stops = door.leaves.flatMap((leaf) => [
    ...[...standingNear(room, leaf), ...wallsNear(room, leaf, door.wall)].flatMap((body): readonly Stop[] => {
      const angle = shareHeight(leaf, body) ? stopAngle(leaf, body.outline) : null;
      return angle !== null && angle < OPEN_ENOUGH ? [{ thing: body.thing, angle }] : [];
    }),
    ...backWallStop(room, leaf),
  ]);
  return stops.sort((a, b) => a.angle - b.angle);
}

/** Whether leaves of two doors sweep over one place: only one of the two can stand open. */
export function sweepsMeet(one: Door, other: Door): boolean {
  return one.leaves.some((leaf) =>
    other.leaves.some(
      (second) =>
        Math.hypot(leaf.pivot[0] - second.pivot[0], leaf.pivot[1] - second.pivot[1]) < leaf.width + second.width &&
        shareHeight(leaf, second) &&
        stopAngle(leaf, sweepOf(second)) !== null,
    ),
  );
}

function standingNear({ standing }: Room, leaf: Leaf): readonly Body[] {
  return standing.filter(({ outline }) => isNear(leaf, outline));
}

/** Whether an outline's extent reaches into a leaf's. */
function isNear({ pivot, width }: Leaf, outline: readonly PlanPoint[]): boolean {
  return ([0, 1] as const).every((axis) => {
    const places = outline.map((place) => place[axis]);
    return Math.min(...places) < pivot[axis] + width && Math.max(...places) > pivot[axis] - width;
  });
}

function wallsNear({ plan, stage, walls }: Room, leaf: Leaf, own: Wall): readonly Body[] {
  return walls
    .filter(
      ({ wall, line }) =>
        wall !== own && distanceToSegment(leaf.pivot, [line.from, line.to]) < leaf.width + MITRED * wall.thickness,
    )
    .flatMap(({ wall, line }) => wallBodies(plan, wall, line, stage, leaf.low, leaf.high));
}

/** A mitred end reaches no farther from the drawn line than this many thicknesses (see `mitreWall`). */
const MITRED = 4;

function backWallStop({ stage }: Room, leaf: Leaf): readonly Stop[] {
  const far = leaf.pivot[1] + leaf.width;
  if (far <= stage.depth + TOUCH_M || leaf.pivot[1] > stage.depth) return [];
  const across: readonly PlanPoint[] = [
    [leaf.pivot[0] - 2 * leaf.width, stage.depth],
    [leaf.pivot[0] + 2 * leaf.width, stage.depth],
  ];
  const angle = stopAngle(leaf, across);
  return angle !== null && angle < OPEN_ENOUGH ? [{ thing: null, angle }] : [];
}
