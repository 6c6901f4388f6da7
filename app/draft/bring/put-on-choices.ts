import type { BroughtUnit } from "@/lib/draft/bring/brought";
import type { LengthUnits } from "@/lib/measure/length";

/** The plans that what is brought can be put on. */
export const PUT_ON_KEYS = ["new-ft", "new-m", "table"] as const;
export type PutOnKey = (typeof PUT_ON_KEYS)[number];

/** A new plan, in what the file counts in; in feet where it does not tell. */
export function firstPutOn(unit: BroughtUnit): PutOnKey {
  const name = unit.kind === "unknown" ? unit.likely[0]?.name : unit.name;
  return name?.includes("metre") ? "new-m" : "new-ft";
}

/** The measure of a new plan; null for the plan on the table, which has its own. */
export function newUnits(on: PutOnKey): LengthUnits | null {
  return on === "table" ? null : on === "new-m" ? "m" : "ft-in";
}
