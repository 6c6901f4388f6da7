import { setRoom } from "@/app/_sheet/set-room";
import type { Exercise } from "@/lib/exercise/exercise";
import { createPractice } from "./attempt-store";
import type { PracticeRoom } from "./practice-context";

/** All that the parts of one exercise's practice share. */
export function practiceRoom(exercise: Exercise): PracticeRoom {
  return { ...setRoom(exercise), paperRatio: exercise.scaleRatio, store: createPractice(exercise) };
}
