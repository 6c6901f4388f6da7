"use client";

import { OwnExercise } from "@/app/_parts/own-exercise/own-exercise";
import { Notes } from "../../[id]/notes/notes";

/** The notes of an exercise that only this browser has. */
export function OwnNotes() {
  return <OwnExercise>{({ exercise, id }) => <Notes key={id} exercise={exercise} own={id} />}</OwnExercise>;
}
