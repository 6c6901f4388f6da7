import type { WrittenExercise } from "../exercise/exercise-schema";
import { writeExercise } from "../exercise/write-exercise";
import { writeLength } from "../exercise/write-length";
import type { Draft } from "./draft";

/**
 * A draft as the file of its exercise. Marks that are worked out are left out of it, for its reader to work out; an eye that
 * the author set by the back wall's foot is written so. What stands in the file comes back from it (see `readDraft`).
 */
export function writeDraft({ exercise, marksBy, backWallRise }: Draft): WrittenExercise {
  const written = writeExercise(exercise);
  const { marks, ...task } = written.task;
  const { distance, ...viewer } = written.viewer;
  return {
    ...written,
    viewer:
      backWallRise === null
        ? { distance, ...viewer }
        : { backWallRise: writeLength(backWallRise, exercise.units), ...viewer },
    task: marksBy === "order" ? task : { ...task, marks },
  };
}
