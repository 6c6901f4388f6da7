import type { AttemptRecord } from "@/lib/progress/record";
import type { Attempt } from "./attempt";
import { readAttempt } from "./read-attempt";
import { type Records, readRecords, recordRun } from "./record";
import { FINISHED_KEY, keysOf, put, putSlim, type Shelf, take } from "./shelf";

export const ATTEMPT_KEY = "plasterline.attempt.";
export const RECORDS_KEY = "plasterline.records";

/** The most finished exercises whose every mark is kept; the oldest make room. About 3 kB each, of the 5 MB a browser gives. */
export const MOST_FINISHED = 500;

/** Keeps an attempt; false when the storage refuses. */
export function keepAttempt(shelf: Shelf, attempt: Attempt): boolean {
  return put(shelf, ATTEMPT_KEY + attempt.exercise, attempt);
}

/** The attempt under way at this version of the exercise, or null. */
export function keptAttempt(shelf: Shelf, exercise: { readonly id: string; readonly version: number }): Attempt | null {
  const attempt = readAttempt(take(shelf, ATTEMPT_KEY + exercise.id));
  return attempt?.exercise === exercise.id && attempt.version === exercise.version ? attempt : null;
}

export function forgetAttempt(shelf: Shelf, exercise: string): void {
  shelf.removeItem(ATTEMPT_KEY + exercise);
}

export function keepRecords(shelf: Shelf, records: Records): boolean {
  return put(shelf, RECORDS_KEY, records);
}

export function keptRecords(shelf: Shelf): Records {
  return readRecords(take(shelf, RECORDS_KEY)) ?? {};
}

/** Keeps a finished exercise: its score beside the best one, and every mark. False when the storage refuses. */
export function keepFinished(shelf: Shelf, record: AttemptRecord): boolean {
  const scores = keepRecords(shelf, recordRun(keptRecords(shelf), record.exercise, record.score, record.when));
  return keepMarks(shelf, record) && scores;
}

/** Keeps every mark of a finished exercise, under a key of its own, so that two windows never write over each other. */
export function keepMarks(shelf: Shelf, record: AttemptRecord): boolean {
  const key = `${FINISHED_KEY}${new Date(record.when).toISOString()}.${record.exercise}`;
  const kept = putSlim(shelf, key, record);
  for (const oldest of keysOf(shelf, FINISHED_KEY).slice(0, -MOST_FINISHED)) shelf.removeItem(oldest);
  return kept;
}
