import type { Exercise } from "../../exercise/exercise";
import type { ProjectedPoint } from "../../exercise/exercise-points";
import { tolerances } from "../../exercise/tolerance";
import { toPaperMm } from "../../measure/scale";
import { capital } from "../../plan/first-letter";
import { sayPoint } from "../../plan/say-point";
import { trueOn } from "./key-lists";
import type { Asked } from "./task-lines";

/**
 * Where each mark belongs on the paper, millimetres from the foot of the centre line, and how near is near enough at the
 * sheet's scale.
 */
export function truePointLines(exercise: Exercise, points: ReadonlyMap<string, ProjectedPoint>): Asked {
  const { task, scaleRatio } = exercise;
  const near = tolerances(exercise, points);
  const reading = task.kind === "picture-to-plan";
  const lines = task.marks.flatMap((name): string[] => {
    const point = points.get(name);
    const at = point && trueOn(exercise, point);
    const tolerance = near.get(name);
    if (!at || tolerance === undefined) return [];
    const [x, y] = at.map((metres) => toPaperMm(metres, scaleRatio)) as [number, number];
    const place = `${say(x, "right", "left")}, ${say(y, reading ? "upstage" : "up", reading ? "downstage" : "down")}`;
    return [`${capital(sayPoint(point))}: ${place}. (${tolerance.toFixed(1)})`];
  });
  const lead = reading
    ? "Millimetres on the plan, from where the centre line crosses the plaster line. In brackets, how far off its place in the picture the mark may be drawn:"
    : "Millimetres in the picture, from where the centre line crosses the plaster line. In brackets, how near is right:";
  return {
    lead,
    lines,
  };
}

/** By which lines each point is found; of an exercise that is read back the lines alone, since all of its points are found one way. */
export function methodLines(
  { task }: Pick<Exercise, "task">,
  constructions: readonly { readonly point: ProjectedPoint; readonly method: string }[],
): Asked {
  if (task.kind === "picture-to-plan")
    return {
      lead: "Through each point a line from the CVP gives its offset on the plaster line, a line from a distance point its depth beside it.",
      lines: [],
    };
  return {
    lead: "Each point by ruler, from what stands on the sheet before it. The lines are blue; the method of each:",
    lines: constructions.map(({ point, method }) => `${capital(sayPoint(point))}: ${method}.`),
  };
}

function say(mm: number, more: string, less: string): string {
  return `${Math.abs(mm).toFixed(1)} ${mm < 0 ? less : more}`;
}
