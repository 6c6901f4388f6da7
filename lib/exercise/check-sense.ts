import type { Exercise } from "./exercise";
import { exercisePoints } from "./exercise-points";
import type { Finding } from "./finding";
import { checkMarks } from "./sense-marks";
import { checkMasking } from "./sense-masking";
import { checkIds, checkSizes } from "./sense-sizes";
import { checkView } from "./sense-view";
import { checkWalls } from "./sense-walls";

/**
 * Whether an exercise of the right form makes sense: faults first in the file's own order of parts, then notes.
 * An exercise without faults can be graded.
 */
export function checkSense(exercise: Exercise): readonly Finding[] {
  const points = exercisePoints(exercise);
  const findings = [
    ...checkSizes(exercise),
    ...checkIds(exercise.plan),
    ...checkWalls(exercise),
    ...checkMasking(exercise.plan),
    ...checkView(exercise, points),
    ...checkMarks(exercise, points),
  ];
  return [
    ...findings.filter(({ weight }) => weight === "fault"),
    ...findings.filter(({ weight }) => weight === "note"),
  ];
}

/** The faults alone. */
export function faultsOf(exercise: Exercise): readonly Finding[] {
  return checkSense(exercise).filter(({ weight }) => weight === "fault");
}
