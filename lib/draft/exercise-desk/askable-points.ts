import type { Exercise } from "../../exercise/exercise";
import { exercisePoints, type ProjectedPoint } from "../../exercise/exercise-points";
import { insideFrame } from "../../exercise/inside-frame";
import type { Thing } from "../draft";
import { thingKey, thingOfPoint } from "../sense/note-place";

/** What the student has to do with a point: place it, find it on the sheet, or nothing. */
export type PointUse = "asked" | "given" | "free";

export type AskablePoint = { readonly point: ProjectedPoint; readonly use: PointUse };

/** The points of one thing of the plan. */
export type AskableGroup = { readonly thing: Thing; readonly points: readonly AskablePoint[] };

/**
 * The points that can be asked, thing by thing in the plan's order: those that the picture shows inside its frame, and of them,
 * where the plan is read back, those on the floor. A point that is asked or given already is there even if it could not be.
 */
export function askablePoints(exercise: Exercise): readonly AskableGroup[] {
  const { task, stage, viewer } = exercise;
  const [asked, given] = [new Set(task.marks), new Set(task.given)];
  const groups = new Map<string, { readonly thing: Thing; readonly points: AskablePoint[] }>();
  for (const point of exercisePoints(exercise).values()) {
    const use = asked.has(point.name) ? "asked" : given.has(point.name) ? "given" : "free";
    const shown = point.picture !== null && insideFrame(stage, viewer, point.picture);
    const askable = shown && (task.kind === "plan-to-picture" || point.onFloor);
    if (use === "free" && !askable) continue;
    const thing = thingOfPoint(point);
    const key = thingKey(thing);
    const group = groups.get(key) ?? { thing, points: [] };
    group.points.push({ point, use });
    groups.set(key, group);
  }
  return [...groups.values()];
}
