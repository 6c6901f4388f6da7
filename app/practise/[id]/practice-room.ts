import { createPost } from "@/app/_parts/hand-ins/post";
import type { Exercise } from "@/lib/exercise/exercise";
import { exercisePoints } from "@/lib/exercise/exercise-points";
import { listEdges } from "@/lib/plan/list-edges";
import { createPractice } from "./attempt-store";
import { truePlaces } from "./drawn-points";
import type { PracticeRoom } from "./practice-context";
import { sheetBounds } from "./sheet-bounds";
import { type Homework, homeworkDesk, ownDesk } from "./work-desk";

/** All that the parts of one exercise's practice share. */
export function practiceRoom(exercise: Exercise, homework: Homework | null = null): PracticeRoom {
  const points = exercisePoints(exercise);
  const work = homework && { homework, post: createPost() };
  return {
    exercise,
    points,
    truth: truePlaces(exercise, points),
    edges: listEdges(exercise.plan, points),
    bounds: sheetBounds(exercise),
    paperRatio: exercise.scaleRatio,
    store: createPractice(exercise, undefined, work ? homeworkDesk(work.homework, work.post) : ownDesk),
    work,
  };
}
