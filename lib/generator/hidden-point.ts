import { cross, subtract } from "../geometry/vector";
import { namePoints } from "../plan/name-points";
import type { Plan } from "../plan/plan";
import { wallLine } from "../plan/wall-line";
import type { StagePoint } from "../stage/frame";
import { floorHeight, type Stage } from "../stage/stage";
import { eyePoint, type Viewer } from "../stage/viewer";
import { type Solid, solidsOf } from "./footprint";

/** Solids are taken this much larger all round, so that a side seen edge on hides what lies along it, metres. */
const SKIN_M = 2e-4;
/** A sight line may run within a solid's skin for this last share of its length: its end may stand on the solid. */
const GRAZE = 1e-3;
/** The same for a wall, which has no skin: the line may end on it. */
const AT_WALL = 1e-6;

type Set = { readonly plan: Plan; readonly stage: Stage; readonly viewer: Viewer };

/** The named points of a set that the eye cannot see: behind furniture, a platform or a tread (their own too), or a wall. */
export function hiddenPoints({ plan, stage, viewer }: Set): ReadonlySet<string> {
  const eye = eyePoint(viewer);
  const solids = solidsOf(plan, (y) => floorHeight(stage, y));
  return new Set(
    [...namePoints(plan, stage).values()]
      .filter(({ at }) => solids.some((solid) => passesThrough(eye, at, solid)) || wallBetween(eye, at, plan))
      .map(({ name }) => name),
  );
}

/** Whether the straight line from the eye to a point runs through the inside of a solid: the line is cut by each side in turn. */
export function passesThrough(eye: StagePoint, at: StagePoint, { outline, low, high }: Solid): boolean {
  let [enter, leave] = [0, 1];
  const keep = (atEye: number, atPoint: number) => {
    // The inside is where this runs below 0.
    if (atEye >= 0 && atPoint >= 0) leave = -1;
    const t = atEye / (atEye - atPoint);
    if (atEye > 0 && atPoint < 0) enter = Math.max(enter, t);
    if (atEye < 0 && atPoint > 0) leave = Math.min(leave, t);
  };
  outline.forEach((corner, i) => {
    const side = subtract(outline[(i + 1) % outline.length] ?? corner, corner);
    const long = Math.hypot(...side);
    const outside = (p: StagePoint) => -cross(side, subtract([p[0], p[1]], corner)) / long - SKIN_M;
    keep(outside(eye), outside(at));
  });
  keep(eye[2] - high - SKIN_M, at[2] - high - SKIN_M);
  keep(low - SKIN_M - eye[2], low - SKIN_M - at[2]);
  return leave > enter && (leave - enter > GRAZE || leave < 1 - GRAZE);
}

/** Whether a wall stands between the eye and a point; one sees through its openings. */
function wallBetween(eye: StagePoint, at: StagePoint, plan: Plan): boolean {
  return plan.walls.some((wall) => {
    const line = wallLine(plan, wall);
    if (!line) return false;
    const ahead = subtract([at[0], at[1]], [eye[0], eye[1]]);
    const turn = cross(ahead, line.along);
    if (turn === 0) return false;
    const toWall = subtract(line.from, [eye[0], eye[1]]);
    const t = cross(toWall, line.along) / turn;
    const along = cross(toWall, ahead) / turn;
    if (!(t > AT_WALL && t < 1 - AT_WALL && along > AT_WALL && along < line.length - AT_WALL)) return false;
    const height = eye[2] + (at[2] - eye[2]) * t;
    if (height > wall.base + wall.height) return false;
    return !wall.openings.some(
      (opening) =>
        opening.kind !== "niche" &&
        along > opening.at &&
        along < opening.at + opening.width &&
        height > opening.sill &&
        height < opening.head,
    );
  });
}
