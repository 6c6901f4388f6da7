"use client";

import { OwnExercise } from "@/app/_parts/own-exercise/own-exercise";
import { Demonstrate } from "../[id]/demonstrate";

/** The demonstration of an exercise that only this browser has. */
export function OwnDemonstration() {
  return (
    <OwnExercise>
      {({ exercise, id, text }) => <Demonstrate key={id} exercise={exercise} own={id} text={text} />}
    </OwnExercise>
  );
}
