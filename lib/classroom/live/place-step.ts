import { type DemonstrationStep, SHEET_PARTS } from "../../drawing/demonstration/demonstration-step";
import type { Exercise } from "../../exercise/exercise";
import { exercisePoints, type ProjectedPoint } from "../../exercise/exercise-points";
import { printLength } from "../../measure/print-length";
import { capital } from "../../plan/first-letter";
import { sayAcross, sayDepth } from "../../plan/say-place";
import { sayPoint } from "../../plan/say-point";
import { floorHeight } from "../../stage/stage";

/**
 * The step of a demonstration at which everyone places a point: the empty sheet with all that is given or was asked before it
 * at its true place, and the point lit where it is to be read. Nothing of it tells where the mark belongs. Null for a point
 * that the exercise does not ask or the eye does not see.
 */
export function placeStep(exercise: Exercise, name: string): DemonstrationStep | null {
  const { task } = exercise;
  const points = exercisePoints(exercise);
  const point = points.get(name);
  const turn = task.marks.indexOf(name);
  if (!point?.picture || turn < 0) return null;
  const reading = task.kind === "picture-to-plan";
  return {
    number: 1,
    kind: "place",
    point: name,
    title: capital(sayPoint(point)),
    part: exercise.title,
    sentence: reading
      ? `The picture shows ${sayPoint(point)} here. Where does it stand on the plan?`
      : sayWhere(exercise, point),
    note: { worth: "", watch: [], ask: "" },
    shown: {
      parts: SHEET_PARTS,
      placed: [...task.given, ...task.marks.slice(0, turn)],
      lines: [],
      drawn: 0,
      lit: reading ? { picture: point.picture, plan: null } : { picture: null, plan: [point.at[0], point.at[1]] },
      fresh: null,
      toRead: reading,
      finished: false,
    },
  };
}

/** Where the plan has it, and how high it is, which no plan shows. */
function sayWhere({ stage, units }: Exercise, { at: [x, y, z], onFloor, base }: ProjectedPoint): string {
  const place = capital(`${sayAcross(x, units)}, ${sayDepth(y, units)}`);
  if (onFloor && base === 0) return `${place}.`;
  return `${place}; ${printLength(z - floorHeight(stage, y), units)} above the floor.`;
}
