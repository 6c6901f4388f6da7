import type { Place } from "@/lib/classroom/live/cloud";
import type { Exercise } from "@/lib/exercise/exercise";
import { exercisePoints } from "@/lib/exercise/exercise-points";
import { readExerciseJson } from "@/lib/exercise/read-exercise";

/** Three walls, of which the corner B is asked first. */
export function liveExercise(): Exercise {
  const reading = readExerciseJson({
    format: "plasterline.exercise/1",
    id: "ferry-shed",
    version: 1,
    title: "The ferry shed",
    unit: "walls",
    level: 2,
    units: "ft-in",
    scale: "1/4in=1ft",
    stage: { opening: { width: 32, height: 20 }, depth: 26 },
    viewer: { distance: 36, eyeHeight: 8 },
    plan: {
      corners: { A: [-12, 3], B: [-7, 14], C: [9, 14] },
      walls: [
        { id: "W1", from: "A", to: "B", height: 14 },
        { id: "W2", from: "B", to: "C", height: 14 },
      ],
    },
    task: { kind: "plan-to-picture", marks: ["B.foot", "C.foot", "B.top"] },
  });
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.exercise;
}

/** Where someone puts a floor point who draws its depth in the plan's proportion, between plaster line and back wall. */
export function planDepthMark(exercise: Exercise, name: string): Place {
  const { stage, viewer } = exercise;
  const at = exercisePoints(exercise).get(name)?.at;
  if (!at) throw new Error(`${name} names no point.`);
  const [x, y] = at;
  const backWall = viewer.eyeHeight * (1 - viewer.distance / (viewer.distance + stage.depth));
  const up = (y / stage.depth) * backWall;
  const s = (viewer.eyeHeight - up) / viewer.eyeHeight;
  return [viewer.offset + (x - viewer.offset) * s, up];
}
