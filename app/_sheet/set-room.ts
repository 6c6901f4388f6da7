import type { Place } from "@/app/_parts/kept-work/attempt";
import type { Exercise } from "@/lib/exercise/exercise";
import { exercisePoints, type ProjectedPoint } from "@/lib/exercise/exercise-points";
import type { Edge } from "@/lib/plan/edge";
import { listEdges } from "@/lib/plan/list-edges";
import { truePlaces } from "./drawn-points";
import { type SheetBounds, sheetBounds } from "./sheet-bounds";

/** An exercise with all that drawing it needs. */
export type SetRoom = {
  readonly exercise: Exercise;
  readonly points: ReadonlyMap<string, ProjectedPoint>;
  /** True places on the drawing the student marks. */
  readonly truth: ReadonlyMap<string, Place>;
  readonly edges: readonly Edge[];
  readonly bounds: SheetBounds;
};

export function setRoom(exercise: Exercise): SetRoom {
  const points = exercisePoints(exercise);
  return {
    exercise,
    points,
    truth: truePlaces(exercise, points),
    edges: listEdges(exercise.plan, points),
    bounds: sheetBounds(exercise),
  };
}
