import type { Place } from "@/app/_parts/kept-work/attempt";
import type { Exercise } from "@/lib/exercise/exercise";
import type { ProjectedPoint } from "@/lib/exercise/exercise-points";
import type { Mark } from "@/lib/exercise/marks";
import { planeOf } from "./plane-of";

export type DrawnPoints = ReadonlyMap<string, Place>;

/**
 * The points that are on the sheet, by name: the given ones, then the marks set down, at their true places or at the
 * student's own as the exercise goes on from.
 */
export function drawnPoints(
  { task }: Pick<Exercise, "task">,
  truth: ReadonlyMap<string, Place>,
  marks: readonly Mark[],
): DrawnPoints {
  const given = task.given.flatMap((name): [string, Place][] => {
    const at = truth.get(name);
    return at ? [[name, at]] : [];
  });
  const placed = marks.flatMap((mark): [string, Place][] => {
    const at = task.goOnFrom === "own" ? mark.at : truth.get(mark.point);
    return at ? [[mark.point, [at[0], at[1]]]] : [];
  });
  return new Map([...given, ...placed]);
}

/** Where each point truly lies on the drawing the student marks. */
export function truePlaces(
  { task }: Pick<Exercise, "task">,
  points: ReadonlyMap<string, ProjectedPoint>,
): ReadonlyMap<string, Place> {
  return new Map(
    [...points].flatMap(([name, point]): [string, Place][] => {
      if (planeOf({ task }) === "plan") return [[name, [point.at[0], point.at[1]]]];
      return point.picture ? [[name, point.picture]] : [];
    }),
  );
}

/** Where each point truly lies in the picture: the drawing that is read back is whole from the start. */
export function seenPlaces(points: ReadonlyMap<string, ProjectedPoint>): ReadonlyMap<string, Place> {
  return new Map([...points].flatMap(([name, { picture }]): [string, Place][] => (picture ? [[name, picture]] : [])));
}
