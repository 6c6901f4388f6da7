import { SAME_POINT_M } from "../../geometry/segments-cross";
import { distance } from "../../geometry/vector";
import type { PlanPoint } from "../../stage/frame";

/** The name of the corner that stands at a place, by the first of them; null where none does. */
export function cornerAt(corners: Iterable<readonly [string, PlanPoint]>, at: PlanPoint): string | null {
  for (const [name, corner] of corners)
    if (Math.abs(corner[0] - at[0]) < SAME_POINT_M && distance(corner, at) < SAME_POINT_M) return name;
  return null;
}

/** Two corners as one word, whichever is first: of two walls between the same corners it is the same. */
export function pairOf(one: string, other: string): string {
  return one < other ? `${one} ${other}` : `${other} ${one}`;
}
