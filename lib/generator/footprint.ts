import type { Vector2 } from "../geometry/vector";
import { leftOf, subtract } from "../geometry/vector";
import { furnitureCorners } from "../plan/furniture-corners";
import type { Plan, Stair } from "../plan/plan";
import { stairNosings } from "../plan/stair-nosings";

/** A convex outline in the plan, counter-clockwise; two points stand for a line. */
export type Outline = readonly Vector2[];

/** Outlines that overlap by less than this only touch, metres. */
const TOUCH_M = 1e-6;

/** Whether two convex outlines share more than an edge: no line of an edge's direction parts them. */
export function overlap(a: Outline, b: Outline): boolean {
  return [...edgeNormals(a), ...edgeNormals(b)].every((normal) => {
    const [lowA, highA] = spanAlong(a, normal);
    const [lowB, highB] = spanAlong(b, normal);
    return lowA < highB - TOUCH_M && lowB < highA - TOUCH_M;
  });
}

function edgeNormals(outline: Outline): readonly Vector2[] {
  return outline.map((point, i) => leftOf(subtract(outline[(i + 1) % outline.length] as Vector2, point)));
}

function spanAlong(outline: Outline, [nx, ny]: Vector2): readonly [low: number, high: number] {
  const length = Math.sqrt(nx * nx + ny * ny);
  const at = outline.map(([x, y]) => (x * nx + y * ny) / length);
  return [Math.min(...at), Math.max(...at)];
}

/** Whether the straight way from a to b cuts through a wall; to touch it is not to cut. */
export function cuts([ax, ay]: Vector2, [bx, by]: Vector2, [[cx, cy], [dx, dy]]: readonly [Vector2, Vector2]): boolean {
  const c = (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
  const d = (bx - ax) * (dy - ay) - (by - ay) * (dx - ax);
  if (c * d >= 0) return false;
  const a = (dx - cx) * (ay - cy) - (dy - cy) * (ax - cx);
  const b = (dx - cx) * (by - cy) - (dy - cy) * (bx - cx);
  return a * b < 0;
}

/** The floor a flight covers: from its lowest nosing back over all its treads. */
export function stairOutline(stair: Stair): Outline {
  const [first, second] = stair.nosing;
  const [dx, dy] = subtract(second, first);
  const length = Math.sqrt(dx * dx + dy * dy);
  const run = (stair.steps * stair.tread) / length;
  const back: Vector2 = [-dy * run, dx * run];
  return [first, second, [second[0] + back[0], second[1] + back[1]], [first[0] + back[0], first[1] + back[1]]];
}

/** Something solid that stands on the stage: an outline and the heights it fills. */
export type Solid = { readonly outline: Outline; readonly low: number; readonly high: number };

/** What of a plan one can neither walk nor see through, on a level floor or a raked one; walls apart. */
export function solidsOf(plan: Plan, rise: (y: number) => number): readonly Solid[] {
  const treads = plan.stairs.flatMap((stair) =>
    stairNosings({ ...stair, riser: stair.riser }, { rake: 0 }).map((nosing): Solid => {
      const low = rise(stair.nosing[0][1]) + stair.base;
      const one: Stair = {
        ...stair,
        steps: 1,
        nosing: [
          [nosing.start[0], nosing.start[1]],
          [nosing.end[0], nosing.end[1]],
        ],
      };
      return { outline: stairOutline(one), low, high: low + (nosing.start[2] - stair.base) };
    }),
  );
  return [
    ...plan.platforms.map(({ outline, base, height }): Solid => {
      const low = rise(outline[0]?.[1] ?? 0) + base;
      return { outline, low, high: low + height };
    }),
    ...treads,
    ...plan.furniture.map((item): Solid => {
      const low = rise(item.at[1]) + item.base;
      return { outline: furnitureCorners(item), low, high: low + item.height };
    }),
  ];
}
