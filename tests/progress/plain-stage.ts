import type { Exercise } from "@/lib/exercise/exercise";
import { exercisePoints } from "@/lib/exercise/exercise-points";
import type { Mark } from "@/lib/exercise/marks";
import { readExerciseJson } from "@/lib/exercise/read-exercise";
import type { Grade } from "@/lib/grading/grade";
import { gradeMarks } from "@/lib/grading/grade-marks";

/**
 * A stage for arithmetic by hand: the eye 10 m before the plaster line and 5 m up, so that s = 10 / (10 + y), an opening of
 * 12 m by 8 m, 10 m deep, drawn at 1:100, where a metre of the picture is 10 mm of paper. A wall rakes from A to B.
 */
export function plainStage(changes: Record<string, unknown> = {}, task: Record<string, unknown> = {}): Exercise {
  const reading = readExerciseJson({
    format: "plasterline.exercise/1",
    id: "plain-stage",
    title: "A plain stage",
    unit: "floor",
    level: 1,
    units: "m",
    scale: "1:100",
    stage: { opening: { width: 12, height: 8 }, depth: 10, apron: 2 },
    viewer: { distance: 10, eyeHeight: 5 },
    plan: {
      corners: { A: [-4, 0], B: [2, 10], Q: [3, -2] },
      walls: [
        {
          id: "W1",
          from: "A",
          to: "B",
          height: 4,
          openings: [
            { id: "door", kind: "door", at: 2, width: 1, head: 2 },
            { id: "light", kind: "window", at: 6, width: 1, sill: 1, head: 2 },
          ],
        },
      ],
      columns: [{ id: "K", at: [2, 5], diameter: 0.4, height: 3 }],
      furniture: [{ id: "chest", kind: "chest", at: [-2, 6], width: 1, depth: 0.5, height: 0.6 }],
      platforms: [
        {
          id: "P",
          outline: [
            [3, 2],
            [5, 2],
            [5, 4],
            [3, 4],
          ],
          height: 0.4,
        },
      ],
      stairs: [
        {
          id: "S",
          nosing: [
            [3, 1.5],
            [5, 1.5],
          ],
          steps: 2,
          tread: 0.3,
          riser: 0.2,
        },
      ],
      masking: [
        {
          id: "leg",
          kind: "leg",
          line: [
            [-6, 2],
            [-5, 2],
          ],
          height: 7,
        },
        {
          id: "border",
          kind: "border",
          line: [
            [-5, 2],
            [5, 2],
          ],
          trim: 5,
          height: 2,
        },
      ],
    },
    task: { kind: "plan-to-picture", marks: ["A.foot", "B.foot", "B.top"], ...task },
    ...changes,
  });
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.exercise;
}

/** The grade of marks at these places. */
export function gradeAt(exercise: Exercise, places: Readonly<Record<string, readonly [number, number]>>): Grade {
  const marks = Object.entries(places).map(([point, at]): Mark => ({ point, at }));
  return gradeMarks(exercise, { format: "plasterline.marks/1", exercise: exercise.id, marks });
}

/** Every asked mark in its true place. */
export function allTrue(exercise: Exercise): Record<string, readonly [number, number]> {
  const points = exercisePoints(exercise);
  return Object.fromEntries(
    exercise.task.marks.map((name) => {
      const point = points.get(name);
      if (!point?.picture) throw new Error(`${name} is not seen.`);
      const at = exercise.task.kind === "plan-to-picture" ? point.picture : ([point.at[0], point.at[1]] as const);
      return [name, [at[0], at[1]] as const];
    }),
  );
}
