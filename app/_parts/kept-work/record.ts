import { isRecord } from "./read-attempt";

/** What a student has done in one exercise. Scores 0 to 100. */
export type ExerciseRecord = {
  readonly times: number;
  readonly best: number;
  readonly last: number;
  /** When it was last finished, ISO 8601. */
  readonly on: string;
};

/** By exercise. */
export type Records = Readonly<Record<string, ExerciseRecord>>;

/** The record after one more run. */
export function recordRun(records: Records, exercise: string, score: number, on: string): Records {
  const before = Object.hasOwn(records, exercise) ? records[exercise] : undefined;
  const after: ExerciseRecord = {
    times: (before?.times ?? 0) + 1,
    best: Math.max(before?.best ?? 0, score),
    last: score,
    on,
  };
  return { ...records, [exercise]: after };
}

/** Records out of storage or a copy, without those that cannot be read; null for anything else. */
export function readRecords(value: unknown): Records | null {
  return isRecord(value)
    ? (Object.fromEntries(Object.entries(value).filter(([, each]) => isSound(each))) as Records)
    : null;
}

function isSound(value: unknown): boolean {
  return (
    isRecord(value) &&
    [value.times, value.best, value.last].every((number) => Number.isFinite(number)) &&
    typeof value.on === "string"
  );
}
