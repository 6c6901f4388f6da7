import type { Exercise } from "../../exercise/exercise";
import type { MarkSet } from "../../exercise/marks";
import { MOST_HINTS } from "../../grading/score";

/**
 * A student's marks as far as they are believed. Only the browser knows which hints were taken, so its word is taken for it, but
 * not beyond what there is to take: none where the work gives none, none for points that are not asked, and of each no more
 * than count.
 */
export function trustedMarks(exercise: Exercise, marks: MarkSet): MarkSet {
  const { hints, ...others } = marks;
  if (hints === undefined || exercise.task.hints === "none") return others;
  const believed = Object.entries(hints).flatMap(([point, count]): [string, number][] =>
    exercise.task.marks.includes(point) && count > 0 ? [[point, Math.min(Math.trunc(count), MOST_HINTS)]] : [],
  );
  return believed.length === 0 ? others : { ...others, hints: Object.fromEntries(believed) };
}
