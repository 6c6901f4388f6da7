import { MAX_STEPS } from "../../exercise/limits";
import type { Edit } from "../edit";

/** Farther than this nothing of a stage is, metres: a slip of the hand or of a unit. */
const FARTHEST_M = 1000;

/** What is wrong with the figures of an edit whatever the plan, in a sentence; null when nothing is. */
export function checkEdit(edit: Edit): string | null {
  if (!everyNumber(edit, Number.isFinite)) return "A figure is missing, or is no number.";
  if (!everyNumber(edit, (value) => Math.abs(value) <= FARTHEST_M)) return "That is more than 1 km. Check its unit.";
  const steps = edit.edit === "add-stair" ? edit.stair.steps : edit.edit === "change-stair" ? edit.change.steps : 1;
  if (steps !== undefined && !(Number.isInteger(steps) && steps >= 1 && steps <= MAX_STEPS))
    return `A flight has 1 to ${MAX_STEPS} risers, a whole number.`;
  return null;
}

function everyNumber(value: unknown, holds: (value: number) => boolean): boolean {
  if (typeof value === "number") return holds(value);
  if (typeof value !== "object" || value === null) return true;
  return Object.values(value).every((inner) => everyNumber(inner, holds));
}
