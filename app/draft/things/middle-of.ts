import type { Thing } from "@/lib/draft/draft";
import { outlineThings } from "@/lib/draft/snapping/outline-things";
import type { Plan } from "@/lib/plan/plan";
import type { PlanPoint } from "@/lib/stage/frame";
import { keyOfThing } from "../hand/hand";

/** The middle of the box round some things of a plan, to turn them about; null where they have no place. */
export function middleOf(things: readonly Thing[], plan: Plan): PlanPoint | null {
  const keys = new Set(things.map(keyOfThing));
  const places = outlineThings(plan).flatMap(({ thing, ring }) => (keys.has(keyOfThing(thing)) ? ring : []));
  if (places.length === 0) return null;
  const middle = (values: readonly number[]) => (Math.min(...values) + Math.max(...values)) / 2;
  return [middle(places.map(([x]) => x)), middle(places.map(([, y]) => y))];
}
