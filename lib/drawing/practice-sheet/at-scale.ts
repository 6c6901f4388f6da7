import type { Exercise } from "../../exercise/exercise";
import type { Scale } from "../../sheet/choose-scale";

/** The exercise as it is drawn at another scale: lettering, tolerances and constructions all follow it. */
export function atScale(exercise: Exercise, { written, ratio }: Scale): Exercise {
  return { ...exercise, scale: written, scaleRatio: ratio };
}
