import type { Exercise } from "../exercise/exercise";
import { exercisePoints, type ProjectedPoint } from "../exercise/exercise-points";
import { printLength } from "../measure/print-length";
import { paperWorth } from "../perspective/foreshortening";
import { sayPoint, shortName } from "../plan/say-point";

/** What a millimetre of paper is worth at the nearest and the farthest asked place: in depth on the floor, otherwise across and in height. */
export function writeNotes(exercise: Exercise): string {
  const points = exercisePoints(exercise);
  const asked = exercise.task.marks.flatMap((name) => points.get(name) ?? []).sort((a, b) => a.at[1] - b.at[1]);
  const floor = asked.filter(({ onFloor }) => onFloor);
  const ends = floor.length > 0 ? floor : asked;
  const [near, far] = [ends[0], ends.at(-1)];
  if (!near || !far) return "";
  const show = (metres: number) => printLength(metres, exercise.units, "near");
  const worth = ({ at }: ProjectedPoint) => paperWorth(exercise.viewer, exercise.stage, at, exercise.scaleRatio);
  const [here, there] = [worth(near), worth(far)];
  if (!here || !there) return "";
  const range = (a: string, b: string) => (a === b ? a : `${a} to ${b}`);
  const across = range(show(here.across), show(there.across));
  if (floor.length === 0 || here.depth === null || there.depth === null)
    return `1 mm of paper is worth about ${across}, across and in height.`;
  const depth =
    near === far
      ? `${show(here.depth)} of depth at ${called(near)}`
      : `${show(here.depth)} of depth at ${called(near)} and ${show(there.depth)} at ${called(far)}`;
  return `1 mm of paper is worth about ${depth}; across, ${across}.`;
}

function called(point: ProjectedPoint): string {
  return point.group === "corner" ? shortName(point) : sayPoint(point);
}
