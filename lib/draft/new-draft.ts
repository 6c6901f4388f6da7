import type { Exercise } from "../exercise/exercise";
import { orderMarks } from "../exercise/order-marks";
import { FOOT_M, type LengthUnits } from "../measure/length";
import { parseScale } from "../measure/scale";
import { BLANK_PLAN } from "../plan/blank-plan";
import { namePoints } from "../plan/name-points";
import type { Stage } from "../stage/stage";
import type { Viewer } from "../stage/viewer";
import type { Draft } from "./draft";

type Start = { readonly scale: string; readonly stage: Stage; readonly viewer: Viewer };

/** A stage to begin with, of a usual size in each measure (common practice, no source); every figure is the author's to change. */
const STARTS: Readonly<Record<LengthUnits, Start>> = {
  "ft-in": {
    scale: "1/4in=1ft",
    stage: {
      opening: { width: 32 * FOOT_M, height: 18 * FOOT_M },
      depth: 24 * FOOT_M,
      apron: 3 * FOOT_M,
      rake: 0,
    },
    viewer: { distance: 36 * FOOT_M, eyeHeight: 8 * FOOT_M, offset: 0 },
  },
  m: {
    scale: "1:50",
    stage: { opening: { width: 10, height: 5.5 }, depth: 7.5, apron: 1, rake: 0 },
    viewer: { distance: 11, eyeHeight: 2.4, offset: 0 },
  },
};

/** An empty stage to draft on: nothing on it, and its marks worked out as it fills. */
export function newDraft(units: LengthUnits): Draft {
  const { scale, stage, viewer } = STARTS[units];
  return {
    exercise: {
      id: "new-set",
      version: 1,
      title: "New set",
      brief: "",
      scenario: "",
      unit: "sets",
      level: 1,
      skills: [],
      notes: "",
      units,
      scale,
      scaleRatio: parseScale(scale) as number,
      stage,
      viewer,
      plan: BLANK_PLAN,
      task: {
        kind: "plan-to-picture",
        marks: [],
        given: [],
        goOnFrom: "true",
        dimensions: "printed",
        tools: ["straightedge"],
        hints: "allowed",
        strictness: "thumbnail",
      },
    },
    marksBy: "order",
    backWallRise: null,
  };
}

/** A draft of an exercise. Marks that stand just as they would be worked out go on being worked out; others are the author's. */
export function draftFromExercise(exercise: Exercise): Draft {
  const { plan, stage, viewer, task } = exercise;
  const order = orderMarks(namePoints(plan, stage), { stage, viewer, given: task.given, kind: task.kind });
  const same = order.length === task.marks.length && order.every((name, i) => name === task.marks[i]);
  return { exercise, marksBy: same ? "order" : "author", backWallRise: null };
}
