import { project } from "../perspective/project";
import { namePoints } from "../plan/name-points";
import type { NamedPoint } from "../plan/named-point";
import type { PicturePoint } from "../stage/frame";
import type { Exercise } from "./exercise";

/**
 * A named point with where it truly falls in the picture; `picture` and `s` are null behind the eye, and where the figures
 * of a file that makes no sense are too large to reckon with.
 */
export type ProjectedPoint = NamedPoint & { readonly picture: PicturePoint | null; readonly s: number | null };

/** Every named point of an exercise, projected, in the plan's order. */
export function exercisePoints(
  exercise: Pick<Exercise, "plan" | "stage" | "viewer">,
): ReadonlyMap<string, ProjectedPoint> {
  const named = namePoints(exercise.plan, exercise.stage);
  return new Map(
    [...named].map(([name, point]) => {
      const seen = project(exercise.viewer, point.at);
      const shown = seen.seen && seen.at.every(Number.isFinite);
      return [name, { ...point, picture: shown ? seen.at : null, s: shown ? seen.s : null }];
    }),
  );
}
