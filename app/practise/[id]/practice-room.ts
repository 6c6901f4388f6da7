import type { Exercise } from "@/lib/exercise/exercise";
import { exercisePoints } from "@/lib/exercise/exercise-points";
import { listEdges } from "@/lib/plan/list-edges";
import { createPractice } from "./attempt-store";
import { truePlaces } from "./drawn-points";
import type { PracticeRoom } from "./practice-context";
import { sheetBounds } from "./sheet-bounds";

/** All that the parts of one exercise's practice share. */
export function practiceRoom(exercise: Exercise): PracticeRoom {
  const points = exercisePoints(exercise);
  return {
    exercise,
    points,
    truth: truePlaces(exercise, points),
    edges: listEdges(exercise.plan, points),
    bounds: sheetBounds(exercise),
    paperRatio: exercise.scaleRatio,
    store: createPractice(exercise),
  };
}
