import type { Exercise } from "@/lib/exercise/exercise";
import { capital } from "@/lib/plan/first-letter";
import { namePoints } from "@/lib/plan/name-points";
import { sayPoint } from "@/lib/plan/say-point";

/** A point that an exercise asks for, by name and in words. */
export type AskedPoint = { readonly name: string; readonly words: string };

/** The points that an exercise asks for, in order. */
export function askedPoints({ plan, stage, task }: Exercise): readonly AskedPoint[] {
  const points = namePoints(plan, stage);
  return task.marks.flatMap((name) => {
    const point = points.get(name);
    return point ? [{ name, words: capital(sayPoint(point)) }] : [];
  });
}
