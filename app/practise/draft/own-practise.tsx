"use client";

import { OwnExercise } from "@/app/_parts/own-exercise/own-exercise";
import { Practise } from "../[id]/practise";

/** The sheet of an exercise that only this browser has. */
export function OwnPractise() {
  return (
    <OwnExercise>
      {({ exercise, id }) => <Practise key={id} exercise={exercise} sheet={{ own: id }} next={null} />}
    </OwnExercise>
  );
}
