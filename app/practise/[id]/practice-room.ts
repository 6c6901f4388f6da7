import { createPost } from "@/app/_parts/hand-ins/post";
import { setRoom } from "@/app/_sheet/set-room";
import type { Exercise } from "@/lib/exercise/exercise";
import { createPractice } from "./attempt-store";
import type { PracticeRoom } from "./practice-context";
import { type Homework, homeworkDesk, ownDesk, type WorkDesk } from "./work-desk";

/** All that the parts of one exercise's practice share. */
export function practiceRoom(
  exercise: Exercise,
  homework: Homework | null = null,
  own: WorkDesk = ownDesk,
): PracticeRoom {
  const work = homework && { homework, post: createPost() };
  const store = createPractice(exercise, undefined, work ? homeworkDesk(work.homework, work.post) : own);
  return { ...setRoom(exercise), paperRatio: exercise.scaleRatio, store, work };
}
