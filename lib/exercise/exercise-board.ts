import type { Board } from "../construction/board";
import type { Exercise } from "./exercise";
import { exercisePoints } from "./exercise-points";

/** What a construction starts from in an exercise, when these named points are on the sheet at their true places. */
export function boardOf(exercise: Exercise, placed: readonly string[]): Board {
  const points = exercisePoints(exercise);
  return {
    plan: exercise.plan,
    stage: exercise.stage,
    viewer: exercise.viewer,
    units: exercise.units,
    scaleRatio: exercise.scaleRatio,
    placed: new Map(
      placed.flatMap((name) => {
        const at = points.get(name)?.picture;
        return at ? [[name, at] as const] : [];
      }),
    ),
    ...(exercise.skills.includes("diagonals") ? { favour: "crossing diagonals" as const } : {}),
  };
}
