import { project } from "../perspective/project";
import { namePoints } from "../plan/name-points";
import type { NamedPoint } from "../plan/named-point";
import type { PicturePoint } from "../stage/frame";
import type { Exercise } from "./exercise";

/** A named point with where it truly falls in the picture; `picture` and `s` are null behind the eye. */
export type ProjectedPoint = NamedPoint & { readonly picture: PicturePoint | null; readonly s: number | null };

/** Every named point of an exercise, projected, in the plan's order. */
export function exercisePoints(
  exercise: Pick<Exercise, "plan" | "stage" | "viewer">,
): ReadonlyMap<string, ProjectedPoint> {
  const named = namePoints(exercise.plan, exercise.stage);
  return new Map(
    [...named].map(([name, point]) => {
      const seen = project(exercise.viewer, point.at);
      return [name, { ...point, picture: seen.seen ? seen.at : null, s: seen.seen ? seen.s : null }];
    }),
  );
}
