import { distance } from "../geometry/vector";
import { toPaperMm } from "../measure/scale";
import { project } from "../perspective/project";
import { centreVanishingPoint } from "../perspective/vanishing-point";
import type { PicturePoint } from "../stage/frame";
import { RULE_STEP_M } from "../stage/plaster-line-rule";
import { backWallCorners } from "../stage/stage";
import type { Exercise, Strictness } from "./exercise";
import type { ProjectedPoint } from "./exercise-points";

/** Standard deviation of a pencil mark laid exactly where it was meant, mm: a pencil's width. */
export const PENCIL_MM = 0.5;

/**
 * Weber fraction of the distance judged, and the most the tolerance may be, mm. Fractions: 2 to 3 % for length (from
 * memory), 6 to 9 % for proportions judged in perspective (Saunders and Backus 2006).
 */
const HAND: Readonly<Record<Strictness, { readonly weber: number; readonly mostMm: number }>> = {
  thumbnail: { weber: 0.06, mostMm: 3 },
  sketch: { weber: 0.03, mostMm: 2 },
  drafted: { weber: 0.01, mostMm: 1 },
};

/** Tolerance on paper for a mark judged over `judgedMm` of paper, mm: two sigma of pencil and judgement, capped. */
export function toleranceForDistance(judgedMm: number, strictness: Strictness): number {
  const { weber, mostMm } = HAND[strictness];
  return Math.min(2 * Math.hypot(PENCIL_MM, weber * judgedMm), mostMm);
}

/** Picture metres from a point to the nearest tick of the plaster line's rule. */
function distanceToRule([X, Z]: PicturePoint, exercise: Exercise): number {
  const step = RULE_STEP_M[exercise.units];
  const last = Math.floor(exercise.stage.opening.width / 2 / step + 1e-9);
  if (!(last >= 0)) return Number.POSITIVE_INFINITY;
  const tick = Math.min(last, Math.max(-last, Math.round(X / step)));
  return Math.hypot(X - tick * step, Z);
}

/** Points fixed on the sheet besides the rule: CVP, corners of the opening and of the back wall. */
export function fixedPoints({ stage, viewer }: Pick<Exercise, "stage" | "viewer">): readonly PicturePoint[] {
  const half = stage.opening.width / 2;
  const back = backWallCorners(stage).flatMap((corner) => {
    const seen = project(viewer, corner);
    return seen.seen ? [seen.at] : [];
  });
  const opening: readonly PicturePoint[] = [
    [-half, 0],
    [half, 0],
    [-half, stage.opening.height],
    [half, stage.opening.height],
  ];
  return [centreVanishingPoint(viewer), ...opening, ...back];
}

/** The nearest of some points, of which there is one at least. Read by index: it is asked of all pairs of a large plan's marks. */
function nearestOf(points: readonly PicturePoint[], at: PicturePoint): PicturePoint {
  let nearest = points[0] as PicturePoint;
  let least = Number.POSITIVE_INFINITY;
  for (const point of points) {
    const across = point[0] - at[0];
    const up = point[1] - at[1];
    const square = across * across + up * up;
    if (square < least) {
      least = square;
      nearest = point;
    }
  }
  return nearest;
}

/**
 * Tolerance of each asked mark, mm on paper at `scaleRatio`. The judged distance runs from the mark's true point to the
 * nearest of the given points, the true points of the marks asked before it, and the sheet's fixed points; it never
 * depends on the student's marks. Marks that are not seen are left out.
 */
export function tolerances(
  exercise: Exercise,
  points: ReadonlyMap<string, ProjectedPoint>,
  scaleRatio: number = exercise.scaleRatio,
): ReadonlyMap<string, number> {
  const truth = (name: string): readonly PicturePoint[] => {
    const picture = points.get(name)?.picture;
    return picture ? [picture] : [];
  };
  const known: PicturePoint[] = [...fixedPoints(exercise), ...exercise.task.given.flatMap(truth)];
  const found = new Map<string, number>();
  for (const mark of exercise.task.marks) {
    const [at] = truth(mark);
    if (!at) continue;
    const nearest = Math.min(distance(at, nearestOf(known, at)), distanceToRule(at, exercise));
    found.set(mark, toleranceForDistance(toPaperMm(nearest, scaleRatio), exercise.task.strictness));
    known.push(at);
  }
  return found;
}
