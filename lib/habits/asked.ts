import type { Exercise } from "../exercise/exercise";
import type { ProjectedPoint } from "../exercise/exercise-points";
import { topOfCorner } from "../plan/list-edges";
import type { Wall } from "../plan/plan";
import type { PicturePoint, PlanPoint } from "../stage/frame";

/** A mark as the habits see it. */
export type Observation = {
  readonly point: ProjectedPoint;
  /** Where the mark is in the picture (a plan mark projected). */
  readonly mark: PicturePoint;
  /** Where it should have been, in the picture. */
  readonly target: PicturePoint;
  readonly toleranceMm: number;
};

/** The other end of a wall, already on the sheet when the point was asked. */
export type Near = {
  readonly wall: Wall;
  readonly foot: PicturePoint;
  readonly top: PicturePoint | null;
  /** From the near end to the asked one in the plan. */
  readonly direction: PlanPoint;
};

/** One asked point with what was on the sheet when it was asked. Picture metres. */
export type Asked = {
  readonly exercise: Exercise;
  readonly point: ProjectedPoint;
  readonly target: PicturePoint;
  /** Of a top or head: its foot on the sheet, and how far the point lies above it on the stage. */
  readonly foot: { readonly at: PicturePoint; readonly height: number } | null;
  readonly near: Near | null;
  /** Where a named point is on the sheet, or null when it is not there yet. */
  onSheet(name: string): PicturePoint | null;
  readonly points: ReadonlyMap<string, ProjectedPoint>;
};

/** The asked points of a set of observations, each with the sheet as it was then: given points, then marks in the task's order. */
export function askedPoints(
  exercise: Exercise,
  points: ReadonlyMap<string, ProjectedPoint>,
  observations: readonly Observation[],
): readonly Asked[] {
  const own = exercise.task.goOnFrom === "own" && exercise.task.kind === "plan-to-picture";
  const sheet = new Map<string, PicturePoint>();
  for (const name of exercise.task.given) {
    const at = points.get(name)?.picture;
    if (at) sheet.set(name, at);
  }
  return observations.map(({ point, mark, target }) => {
    const before = new Map(sheet);
    const onSheet = (name: string) => before.get(name) ?? null;
    sheet.set(point.name, own ? mark : target);
    return {
      exercise,
      point,
      target,
      foot: footOf(point, points, onSheet),
      near: nearEnd(exercise, point, points, [...before.keys()], onSheet),
      onSheet,
      points,
    };
  });
}

function footOf(
  point: ProjectedPoint,
  points: ReadonlyMap<string, ProjectedPoint>,
  onSheet: Asked["onSheet"],
): Asked["foot"] {
  const foot = point.over === null ? undefined : points.get(point.over);
  const at = foot && (onSheet(foot.name) ?? foot.picture);
  return foot && at ? { at, height: point.at[2] - foot.at[2] } : null;
}

/** The other end of the point's wall; of several, the one put on the sheet last. A jamb's near end is the opening's other jamb. */
function nearEnd(
  exercise: Exercise,
  point: ProjectedPoint,
  points: ReadonlyMap<string, ProjectedPoint>,
  order: readonly string[],
  onSheet: Asked["onSheet"],
): Near | null {
  const isTop = point.role === "top" || point.role === "head";
  const ends = candidates(exercise, point, points).flatMap(({ wall, foot, top }) => {
    const [footAt, topAt] = [onSheet(foot), onSheet(top)];
    const last = order.indexOf(isTop ? top : foot);
    const standing = points.get(foot)?.at;
    if (!footAt || !standing || last < 0) return [];
    const direction: PlanPoint = [point.at[0] - standing[0], point.at[1] - standing[1]];
    return [{ last, near: { wall, foot: footAt, top: topAt, direction } }];
  });
  return ends.sort((a, b) => b.last - a.last)[0]?.near ?? null;
}

function candidates(
  { plan }: Exercise,
  point: ProjectedPoint,
  points: ReadonlyMap<string, ProjectedPoint>,
): readonly { wall: Wall; foot: string; top: string }[] {
  if (point.group === "corner")
    return plan.walls
      .filter(({ from, to }) => from === point.element || to === point.element)
      .map((wall) => {
        const other = wall.from === point.element ? wall.to : wall.from;
        return { wall, foot: `${other}.foot`, top: topOfCorner(other, wall, points) };
      });
  if (point.group !== "opening") return [];
  const wall = plan.walls.find(({ id }) => id === point.element);
  const [id, opening, end] = point.name.split(".");
  const other = `${id}.${opening}.${end === "start" ? "end" : "start"}`;
  return wall ? [{ wall, foot: `${other}.sill`, top: `${other}.head` }] : [];
}
