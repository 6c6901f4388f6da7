import { readRecord } from "@/lib/progress/read-record";
import type { AttemptRecord } from "@/lib/progress/record";
import type { Records } from "./record";
import { FINISHED_KEY, keysOf, type Shelf, take } from "./shelf";

/** Every finished exercise that is kept with its marks, oldest first; what cannot be read is passed over. */
export function keptFinished(shelf: Shelf): readonly AttemptRecord[] {
  return keysOf(shelf, FINISHED_KEY).flatMap((key) => {
    const reading = readRecord(take(shelf, key));
    return reading.ok ? [reading.record] : [];
  });
}

/**
 * All that is known of the past: finished exercises with their marks, and those of which only the score is left, from
 * before marks were kept or because they made room.
 */
export function everythingFinished(finished: readonly AttemptRecord[], records: Records): readonly AttemptRecord[] {
  const known = new Set(finished.map(({ exercise }) => exercise));
  const scores = Object.entries(records).flatMap(([exercise, record]) => {
    const reading = known.has(exercise) ? null : readRecord(record, exercise);
    return reading?.ok ? [reading.record] : [];
  });
  return [...scores, ...finished];
}
