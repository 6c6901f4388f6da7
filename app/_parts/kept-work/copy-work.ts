import { readRecords as readFinished } from "@/lib/progress/read-record";
import type { AttemptRecord } from "@/lib/progress/record";
import type { Attempt } from "./attempt";
import { ATTEMPT_KEY, keepAttempt, keepMarks, keepRecords, keptRecords, RECORDS_KEY } from "./keep";
import { keptFinished } from "./kept-finished";
import { isRecord, readAttempt } from "./read-attempt";
import { type Records, readRecords } from "./record";
import { CHECK_KEY, FINISHED_KEY, keysOf, parse, type Shelf, take } from "./shelf";

export const COPY_FORMAT = "plasterline.progress/1";

/** A copy of everything kept, for a file. */
export type ProgressCopy = {
  readonly format: typeof COPY_FORMAT;
  readonly records: Records;
  readonly attempts: readonly Attempt[];
  /** Every mark of the exercises finished. Copies made before these were kept have none. */
  readonly finished: readonly AttemptRecord[];
};

export type Back =
  /** `left`: finished exercises in it that could not be read, and were left out. */
  { readonly ok: true; readonly left: number } | { readonly ok: false; readonly why: string };

/** Everything kept. */
export function copyProgress(shelf: Shelf): ProgressCopy {
  const attempts = keysOf(shelf, ATTEMPT_KEY)
    .map((key) => readAttempt(take(shelf, key)))
    .filter((attempt) => attempt !== null);
  return { format: COPY_FORMAT, records: keptRecords(shelf), attempts, finished: keptFinished(shelf) };
}

/** Puts a copy in place of what is kept; when it cannot, it says why in words, and what was kept stays. */
export function bringBack(shelf: Shelf, text: string): Back {
  const copy = readCopy(text);
  if (!copy) return { ok: false, why: "This file is not a copy of your work: choose one that was saved on this page." };
  const before = copyProgress(shelf);
  if (putCopy(shelf, copy)) return { ok: true, left: copy.left };
  putCopy(shelf, before);
  return { ok: false, why: "The browser's storage is too full for this copy. Your work here is as it was." };
}

/** Forgets everything, photographs of drawings too. */
export function erase(shelf: Shelf): void {
  eraseCopied(shelf);
  for (const key of keysOf(shelf, CHECK_KEY)) shelf.removeItem(key);
}

/** Forgets what a copy would bring back. */
function eraseCopied(shelf: Shelf): void {
  for (const key of [...keysOf(shelf, ATTEMPT_KEY), ...keysOf(shelf, FINISHED_KEY), RECORDS_KEY]) shelf.removeItem(key);
}

function putCopy(shelf: Shelf, copy: ProgressCopy): boolean {
  eraseCopied(shelf);
  // Finished exercises last: where the storage is small, the newest of them are kept.
  return (
    keepRecords(shelf, copy.records) &&
    copy.attempts.every((attempt) => keepAttempt(shelf, attempt)) &&
    copy.finished.every((record) => keepMarks(shelf, record))
  );
}

function readCopy(text: string): (ProgressCopy & { readonly left: number }) | null {
  const value = parse(text);
  if (!isRecord(value) || value.format !== COPY_FORMAT || !Array.isArray(value.attempts)) return null;
  const records = readRecords(value.records);
  const attempts = value.attempts.map(readAttempt);
  if (!records || attempts.some((attempt) => attempt === null)) return null;
  // In a browser a bad score is passed over; a file with one in it was never saved here.
  if (Object.keys(records).length < Object.keys(value.records as object).length) return null;
  const finished = readFinished(value.finished);
  return {
    format: COPY_FORMAT,
    records,
    attempts: attempts.filter((attempt) => attempt !== null),
    finished: finished.records,
    left: finished.problems.length,
  };
}
