import type { Exercise } from "@/lib/exercise/exercise";
import type { Plan, Wall } from "@/lib/plan/plan";
import type { PlanPoint } from "@/lib/stage/frame";

export type Drawn = Pick<Exercise, "plan" | "stage" | "viewer" | "units" | "scaleRatio">;

/** The part of a plan whose drawing may be another than before. */
export type Touched = Omit<Plan, "corners"> & {
  /** Corners to be lettered. */
  readonly corners: readonly (readonly [string, PlanPoint])[];
  /** Walls that changed themselves, or whose ends moved. */
  readonly moved: readonly Wall[];
  /** Every wall that a wall or a corner to be drawn leans on. */
  readonly near: readonly Wall[];
};

/** Everything: for a first drawing. */
export function allOf(plan: Plan): Touched {
  return { ...plan, corners: [...plan.corners], moved: plan.walls, near: plan.walls };
}

/**
 * What has to be drawn anew of a plan that was changed: the things that are others than before, the walls whose ends moved, and
 * those that lean on them, for their mitres and the places of names. Everything, where the stage or the sheet is another or something
 * is gone. The eye has no part in a plan.
 */
export function touchedSince(before: Drawn, after: Drawn): Touched {
  const { plan } = after;
  const sameSheet =
    before.stage === after.stage && before.units === after.units && before.scaleRatio === after.scaleRatio;
  if (!sameSheet || lacksAny(before.plan, plan)) return allOf(plan);
  const sameSurfaces = SURFACES.every((list) => before.plan[list] === plan[list]);
  const others = anew(before.plan.walls, plan.walls);
  const seeds = new Set<string>();
  for (const [name, at] of plan.corners) if (before.plan.corners.get(name) !== at) seeds.add(name);
  // Where a wall went away from, its neighbours end otherwise as well.
  const left = anew(plan.walls, before.plan.walls);
  for (const { from, to } of [...others, ...left]) seeds.add(from).add(to);
  const moved = wallsAt(seeds, plan.walls);
  const corners = endsOf(wallsAt(endsOf(moved, seeds), plan.walls), seeds);
  const walls = wallsAt(corners, plan.walls);
  return {
    moved,
    walls,
    near: wallsAt(endsOf(walls, corners), plan.walls),
    corners: [...corners].flatMap((name) => {
      const at = plan.corners.get(name);
      return at ? [[name, at] as const] : [];
    }),
    // Guards stand where no wall does, and a flight may land on a platform.
    platforms: sameSurfaces ? [] : plan.platforms,
    stairs: sameSurfaces ? [] : plan.stairs,
    furniture: anew(before.plan.furniture, plan.furniture),
    columns: anew(before.plan.columns, plan.columns),
    masking: anew(before.plan.masking, plan.masking),
  };
}

/** What a platform's and a stair's drawing hangs on. */
const SURFACES = ["platforms", "stairs", "walls", "corners"] as const;
const LISTS = ["walls", "platforms", "stairs", "furniture", "columns", "masking"] as const;

/** Whether a plan has no longer all that another has, by name. */
function lacksAny(before: Plan, after: Plan): boolean {
  if (before.corners !== after.corners)
    for (const name of before.corners.keys()) if (!after.corners.has(name)) return true;
  return LISTS.some((list) => lacksOne(before[list], after[list]));
}

type Named = { readonly id: string };

function lacksOne(before: readonly Named[], after: readonly Named[]): boolean {
  if (areInStep(before, after)) return false;
  const there = new Set(after.map(({ id }) => id));
  return before.some(({ id }) => !there.has(id));
}

/** Whether two lists have the same names in the same order, as most have from one frame to the next. */
function areInStep(a: readonly Named[], b: readonly Named[]): boolean {
  return a === b || (a.length === b.length && a.every(({ id }, i) => b[i]?.id === id));
}

function anew<Item extends Named>(before: readonly Item[], after: readonly Item[]): readonly Item[] {
  if (before === after) return [];
  if (areInStep(before, after)) return after.filter((item, i) => item !== before[i]);
  const stood = new Set(before);
  return after.filter((item) => !stood.has(item));
}

function wallsAt(corners: ReadonlySet<string>, walls: readonly Wall[]): readonly Wall[] {
  return corners.size === 0 ? [] : walls.filter(({ from, to }) => corners.has(from) || corners.has(to));
}

function endsOf(walls: readonly Wall[], more: ReadonlySet<string>): ReadonlySet<string> {
  const ends = new Set(more);
  for (const { from, to } of walls) ends.add(from).add(to);
  return ends;
}
