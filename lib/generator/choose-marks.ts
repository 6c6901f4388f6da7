import type { Exercise } from "../exercise/exercise";
import { exercisePoints, type ProjectedPoint } from "../exercise/exercise-points";
import { insideFrame } from "../exercise/inside-frame";
import { HARD_TO_GRADE_M } from "../exercise/sense-marks";
import { fixedPoints, toleranceForDistance } from "../exercise/tolerance";
import { distance } from "../geometry/vector";
import { toPaperMm } from "../measure/scale";
import { paperWorth } from "../perspective/foreshortening";
import type { PicturePoint } from "../stage/frame";
import { ruleTicks } from "../stage/plaster-line-rule";
import { hiddenPoints } from "./hidden-point";

/** A mark lies at least so many tolerances from every other point on the sheet: left at the nearest, it scores less than 100. */
const TOLERANCES_APART = 2;
/** Room over that for the rounding of what is written. */
const ROUNDING_MM = 0.01;

/** Names of points to ask for, in the order asked, and the most of them to take. */
export type Wanted = { readonly names: readonly string[]; readonly most: number };

type Taken = { readonly name: string; readonly at: PicturePoint; readonly toleranceMm: number };

/**
 * Of the wanted points those that make fair marks, in their order: seen, inside the frame, not too coarse in depth, each
 * apart from all that is on the sheet; `most` of all groups together. A top of a wall or a head is asked only where its foot or sill stands before it.
 */
export function chooseMarks(exercise: Exercise, wanted: readonly Wanted[], most: number): readonly string[] {
  const points = exercisePoints(exercise);
  const hidden = hiddenPoints(exercise);
  const { given, kind, strictness } = exercise.task;
  const known = [
    ...fixedPoints(exercise),
    ...ruleTicks(exercise.stage.opening.width, exercise.units).map((X): PicturePoint => [X, 0]),
    ...given.flatMap((name) => {
      const at = points.get(name)?.picture;
      return at ? [at] : [];
    }),
  ];
  const taken: Taken[] = [];
  for (const group of wanted) {
    let left = Math.min(group.most, most - taken.length);
    for (const name of group.names) {
      const point = points.get(name);
      if (left === 0 || !point?.picture || hidden.has(name) || given.includes(name)) continue;
      if (kind === "picture-to-plan" && !point.onFloor) continue;
      if (!insideFrame(exercise.stage, exercise.viewer, point.picture) || !withinSides(exercise, point.picture))
        continue;
      if (!standsOnSheet(point, [...given, ...taken.map((other) => other.name)])) continue;
      const mark = fairMark(exercise, { ...point, picture: point.picture }, known, taken, strictness);
      if (!mark) continue;
      taken.push(mark);
      left -= 1;
    }
  }
  return taken.map(({ name }) => name);
}

/** On the apron too, a mark stays between the sides of the opening. */
function withinSides({ stage }: Exercise, [X]: PicturePoint): boolean {
  return Math.abs(X) <= stage.opening.width / 2;
}

function standsOnSheet({ group, over }: ProjectedPoint, placed: readonly string[]): boolean {
  return (group !== "corner" && group !== "opening") || over === null || placed.includes(over);
}

function fairMark(
  exercise: Exercise,
  point: ProjectedPoint & { readonly picture: PicturePoint },
  known: readonly PicturePoint[],
  taken: readonly Taken[],
  strictness: Exercise["task"]["strictness"],
): Taken | null {
  const { scaleRatio, viewer, stage } = exercise;
  const mm = (other: PicturePoint) => toPaperMm(distance(point.picture, other), scaleRatio);
  const before = [...known.map(mm), ...taken.map(({ at }) => mm(at))];
  const nearest = Math.min(...before);
  const toleranceMm = toleranceForDistance(nearest, strictness);
  if (nearest < TOLERANCES_APART * toleranceMm + ROUNDING_MM) return null;
  if (taken.some((other) => mm(other.at) < TOLERANCES_APART * Math.max(other.toleranceMm, toleranceMm) + ROUNDING_MM))
    return null;
  if (point.onFloor) {
    const depth = paperWorth(viewer, stage, point.at, scaleRatio)?.depth ?? null;
    if (depth === null || depth * toleranceMm > HARD_TO_GRADE_M) return null;
  }
  return { name: point.name, at: point.picture, toleranceMm };
}
