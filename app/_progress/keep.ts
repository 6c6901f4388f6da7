import type { Attempt } from "./attempt";
import { isRecord, readAttempt } from "./read-attempt";
import { type Records, readRecords } from "./record";

const ATTEMPT_KEY = "plasterline.attempt.";
const RECORDS_KEY = "plasterline.records";
export const COPY_FORMAT = "plasterline.progress/1";

/** Of a browser's storage, what is used here. */
export type Shelf = Pick<Storage, "getItem" | "setItem" | "removeItem" | "key" | "length">;

/** A copy of everything kept, for a file. */
export type ProgressCopy = {
  readonly format: typeof COPY_FORMAT;
  readonly records: Records;
  readonly attempts: readonly Attempt[];
};

/** The browser's storage; null where it is blocked or full. */
export function findShelf(): Shelf | null {
  try {
    const shelf = window.localStorage;
    shelf.setItem("plasterline.try", "1");
    shelf.removeItem("plasterline.try");
    return shelf;
  } catch {
    return null;
  }
}

/** Keeps an attempt; false when the storage refuses. */
export function keepAttempt(shelf: Shelf, attempt: Attempt): boolean {
  return put(shelf, ATTEMPT_KEY + attempt.exercise, attempt);
}

/** The attempt under way at this version of the exercise, or null. */
export function keptAttempt(shelf: Shelf, exercise: { readonly id: string; readonly version: number }): Attempt | null {
  const attempt = readAttempt(take(shelf, ATTEMPT_KEY + exercise.id));
  return attempt?.exercise === exercise.id && attempt.version === exercise.version ? attempt : null;
}

export function keepRecords(shelf: Shelf, records: Records): boolean {
  return put(shelf, RECORDS_KEY, records);
}

export function keptRecords(shelf: Shelf): Records {
  return readRecords(take(shelf, RECORDS_KEY)) ?? {};
}

/** Everything kept. */
export function copyProgress(shelf: Shelf): ProgressCopy {
  const attempts = attemptKeys(shelf)
    .map((key) => readAttempt(take(shelf, key)))
    .filter((attempt) => attempt !== null);
  return { format: COPY_FORMAT, records: keptRecords(shelf), attempts };
}

/** Puts a copy in place of what is kept; says in words why it cannot. */
export function bringBack(
  shelf: Shelf,
  text: string,
): { readonly ok: true } | { readonly ok: false; readonly why: string } {
  const copy = readCopy(text);
  if (!copy) return { ok: false, why: "This file is not a copy of your work: choose one that was saved on this page." };
  erase(shelf);
  const kept = keepRecords(shelf, copy.records) && copy.attempts.every((attempt) => keepAttempt(shelf, attempt));
  return kept
    ? { ok: true }
    : { ok: false, why: "The browser's storage is full, so not all of the copy could be kept." };
}

/** Forgets everything. */
export function erase(shelf: Shelf): void {
  for (const key of [...attemptKeys(shelf), RECORDS_KEY]) shelf.removeItem(key);
}

function readCopy(text: string): ProgressCopy | null {
  const value = parse(text);
  if (!isRecord(value) || value.format !== COPY_FORMAT || !Array.isArray(value.attempts)) return null;
  const records = readRecords(value.records);
  const attempts = value.attempts.map(readAttempt);
  if (!records || attempts.some((attempt) => attempt === null)) return null;
  return { format: COPY_FORMAT, records, attempts: attempts.filter((attempt) => attempt !== null) };
}

function attemptKeys(shelf: Shelf): string[] {
  return Array.from({ length: shelf.length }, (_, i) => shelf.key(i) ?? "").filter((key) =>
    key.startsWith(ATTEMPT_KEY),
  );
}

function take(shelf: Shelf, key: string): unknown {
  try {
    return parse(shelf.getItem(key) ?? "null");
  } catch {
    return null;
  }
}

function put(shelf: Shelf, key: string, value: unknown): boolean {
  try {
    shelf.setItem(key, JSON.stringify(value));
    return true;
  } catch {
    return false;
  }
}

function parse(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}
