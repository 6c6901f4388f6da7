import type { Exercise } from "../exercise/exercise";
import { exercisePoints, type ProjectedPoint } from "../exercise/exercise-points";
import { fixedPoints, tolerances } from "../exercise/tolerance";
import { distance } from "../geometry/vector";
import { toPaperMm } from "../measure/scale";
import { wallLine } from "../plan/wall-line";
import type { PicturePoint } from "../stage/frame";
import { ruleTicks } from "../stage/plaster-line-rule";

/** What a mark is worth more when it lies at the back wall, in proportion to its depth. */
const FOR_DEPTH = 0.5;
/** What it is worth more when its wall, or its piece, runs neither square nor parallel to the plaster line. */
const FOR_RAKING = 0.25;
/** What the whole sheet is worth more for each thing that has to be minded at every mark. */
const FOR_SHEET = { rule: 0.15, offCentre: 0.15, rake: 0.25, withoutHints: 0.1, ownPoints: 0.1 } as const;
/** Under this a wall counts as square, or parallel: the smaller share of its direction. */
const RAKING_SHARE = 0.02;

/**
 * How hard an exercise is: a number of our own, only for comparing exercises of one unit. Each mark counts the bits of its
 * placing, log2(1 + distance to the nearest point on the sheet / tolerance), after Fitts's index of difficulty (from
 * memory), so that a stricter exercise counts more and one with more given points less; more for depth and for raking
 * directions. The sum is raised for what has to be minded throughout: scale rule, eye off the centre line, rake.
 */
export function measureDifficulty(exercise: Exercise): number {
  const points = exercisePoints(exercise);
  const allowed = tolerances(exercise, points);
  const { stage, task, viewer } = exercise;
  const known: PicturePoint[] = [
    ...fixedPoints(exercise),
    ...ruleTicks(stage.opening.width, exercise.units).map((X): PicturePoint => [X, 0]),
    ...task.given.flatMap((name) => pictureOf(points.get(name))),
  ];
  let sum = 0;
  for (const name of task.marks) {
    const point = points.get(name);
    const toleranceMm = allowed.get(name);
    for (const at of pictureOf(point)) {
      if (!point || toleranceMm === undefined) continue;
      const nearest = Math.min(...known.map((other) => toPaperMm(distance(at, other), exercise.scaleRatio)));
      const depth = Math.max(point.at[1], 0) / stage.depth;
      const raking = isRaking(exercise, point) ? FOR_RAKING : 0;
      sum += Math.log2(1 + nearest / toleranceMm) * (1 + FOR_DEPTH * depth + raking);
      known.push(at);
    }
  }
  const sheet =
    (task.dimensions === "rule" ? FOR_SHEET.rule : 0) +
    (viewer.offset !== 0 ? FOR_SHEET.offCentre : 0) +
    (stage.rake !== 0 ? FOR_SHEET.rake : 0) +
    (task.hints === "none" ? FOR_SHEET.withoutHints : 0) +
    (task.goOnFrom === "own" ? FOR_SHEET.ownPoints : 0);
  return sum * (1 + sheet);
}

function pictureOf(point: ProjectedPoint | undefined): readonly PicturePoint[] {
  return point?.picture ? [point.picture] : [];
}

function isRaking({ plan }: Exercise, { group, element }: ProjectedPoint): boolean {
  if (group === "furniture") return plan.furniture.some(({ id, turn }) => id === element && turn !== 0);
  const walls = plan.walls.filter(({ id, from, to }) =>
    group === "opening" ? id === element : group === "corner" && (from === element || to === element),
  );
  return walls.some((wall) => {
    const along = wallLine(plan, wall)?.along;
    return along !== undefined && Math.min(Math.abs(along[0]), Math.abs(along[1])) > RAKING_SHARE;
  });
}
