import type { Stage } from "../stage/stage";
import type { Exercise, Task } from "./exercise";
import type { WrittenExercise } from "./exercise-schema";
import { writeLength } from "./write-length";
import { writePlan } from "./write-plan";

/** One in so many is written so where the rake differs from it by rounding alone. */
const WHOLE_RAKE = 1e-9;

/**
 * An exercise as its file writes it: the reverse of reading it, member for member. What is absent by default is left out;
 * lengths are written as an author writes them.
 */
export function writeExercise(exercise: Exercise): WrittenExercise {
  const { stage, viewer, units } = exercise;
  const write = (metres: number) => writeLength(metres, units);
  return {
    format: "plasterline.exercise/1",
    id: exercise.id,
    version: exercise.version,
    title: exercise.title,
    brief: exercise.brief,
    scenario: exercise.scenario,
    unit: exercise.unit,
    level: exercise.level,
    skills: [...exercise.skills],
    notes: exercise.notes,
    units,
    scale: exercise.scale,
    stage: {
      opening: { width: write(stage.opening.width), height: write(stage.opening.height) },
      depth: write(stage.depth),
      apron: write(stage.apron),
      ...writeRake(stage),
    },
    viewer: {
      distance: write(viewer.distance),
      eyeHeight: write(viewer.eyeHeight),
      ...(viewer.offset === 0 ? {} : { offset: write(viewer.offset) }),
    },
    plan: writePlan(exercise.plan, units),
    task: writeTask(exercise.task),
  };
}

/** A rake as the trade says it, `1:20`, where it is one in a whole number; else the ratio itself. */
function writeRake({ rake }: Stage): { rake?: number | string } {
  if (rake === 0) return {};
  const run = 1 / rake;
  const whole = Math.round(run);
  const told = whole > 0 && whole < 1e9 && Math.abs(run - whole) < WHOLE_RAKE * whole;
  return { rake: told ? `1:${whole}` : rake };
}

function writeTask(task: Task): WrittenExercise["task"] {
  const usualTools = task.tools.length === 1 && task.tools[0] === "straightedge";
  return {
    kind: task.kind,
    marks: [...task.marks],
    ...(task.given.length === 0 ? {} : { given: [...task.given] }),
    ...(task.goOnFrom === "true" ? {} : { goOnFrom: task.goOnFrom }),
    dimensions: task.dimensions,
    ...(usualTools ? {} : { tools: [...task.tools] }),
    ...(task.hints === "allowed" ? {} : { hints: task.hints }),
    strictness: task.strictness,
  };
}
