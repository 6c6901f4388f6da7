import { PARTS } from "./error-parts";
import {
  type AttemptRecord,
  type Evidence,
  type HabitRecord,
  type MarkRecord,
  mergeRecords,
  RECORD_FORMAT,
} from "./record";

export type RecordReading =
  | { readonly ok: true; readonly record: AttemptRecord }
  | { readonly ok: false; readonly why: string };

export type RecordsReading = {
  /** What could be read, oldest first. */
  readonly records: readonly AttemptRecord[];
  /** What could not, in words. */
  readonly problems: readonly string[];
};

/** Longer lists and names than these come from no run of this program. */
const MOST_LISTED = 2000;
const LONGEST_NAME = 200;

type Fields = Readonly<Record<string, unknown>>;

/**
 * A record out of a browser's storage or a file. Never throws. Unknown fields are left out; a missing or unreadable one
 * inside a mark counts as having none; only an exercise, a moment and a score are needed. Also reads a record of the
 * app's first kind, `{times, best, last, on}`, where `exercise` says which exercise it is of: it has no marks.
 */
export function readRecord(value: unknown, exercise?: string): RecordReading {
  if (!isFields(value)) return bad("it is not a record");
  const id = nameOrNull(value.exercise) ?? nameOrNull(exercise);
  if (id === null) return bad("it does not say which exercise it is of");
  const of = `the record of ${id}`;
  if (value.format !== undefined && value.format !== RECORD_FORMAT)
    return bad(
      `${of} is of another kind: ${typeof value.format === "string" ? value.format.slice(0, LONGEST_NAME) : "unnamed"}`,
    );
  const when = value.when ?? value.on;
  if (typeof when !== "string" || Number.isNaN(Date.parse(when))) return bad(`${of} does not say when it was made`);
  const score = numberOrNull(value.score ?? value.last);
  if (score === null) return bad(`${of} has no score`);
  return {
    ok: true,
    record: {
      format: RECORD_FORMAT,
      exercise: id,
      version: numberOrNull(value.version) ?? 0,
      when,
      score,
      marks: list(value.marks, readMark),
      habits: list(value.habits, readHabit),
      tells: Array.isArray(value.tells) ? list(value.tells, nameOrNull) : null,
    },
  };
}

/** All records of a list of them, or of the app's first kind of record by exercise. Never throws. */
export function readRecords(value: unknown): RecordsReading {
  if (value === null || value === undefined) return { records: [], problems: [] };
  if (!Array.isArray(value) && !isFields(value)) return { records: [], problems: ["There are no records in it."] };
  const readings = Array.isArray(value)
    ? Array.from(value, (each: unknown) => readRecord(each))
    : Object.keys(value).map((exercise) => readRecord(value[exercise], exercise));
  return {
    records: mergeRecords(
      readings.flatMap((reading) => (reading.ok ? [reading.record] : [])),
      [],
    ),
    problems: readings.flatMap((reading) => (reading.ok ? [] : [`One record was left out: ${reading.why}.`])),
  };
}

function readMark(value: unknown): MarkRecord | null {
  if (!isFields(value)) return null;
  const point = nameOrNull(value.point);
  if (point === null) return null;
  const ratio = numberOrNull(value.depthRatio);
  return {
    point,
    score: numberOrNull(value.score) ?? 0,
    within: value.within === true,
    offMm: numberOrNull(value.offMm),
    toleranceMm: numberOrNull(value.toleranceMm) ?? 0,
    depthMm: numberOrNull(value.depthMm),
    acrossMm: numberOrNull(value.acrossMm),
    heightMm: numberOrNull(value.heightMm),
    upstageM: numberOrNull(value.upstageM),
    acrossM: numberOrNull(value.acrossM),
    heightM: numberOrNull(value.heightM),
    depthRatio: ratio !== null && ratio > 0 ? ratio : null,
    hints: Math.max(0, numberOrNull(value.hints) ?? 0),
    evidence: list(value.evidence, readEvidence),
  };
}

function readEvidence(value: unknown): Evidence | null {
  if (!isFields(value)) return null;
  const skill = nameOrNull(value.skill);
  const part = PARTS.find((each) => each === value.part);
  const guess = numberOrNull(value.guess);
  if (skill === null || part === undefined || guess === null || typeof value.right !== "boolean") return null;
  return { skill, part, right: value.right, guess };
}

function readHabit(value: unknown): HabitRecord | null {
  if (!isFields(value)) return null;
  const id = nameOrNull(value.id);
  if (id === null) return null;
  const odds = numberOrNull(value.odds) ?? 0;
  return { id, odds, marks: list(value.marks, nameOrNull), amount: numberOrNull(value.amount) };
}

/** What can be read of a list; nothing of anything else. */
function list<T>(value: unknown, read: (each: unknown) => T | null): readonly T[] {
  if (!Array.isArray(value)) return [];
  return Array.from(value.slice(0, MOST_LISTED), (each: unknown) => read(each)).filter((each) => each !== null);
}

function isFields(value: unknown): value is Fields {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

function nameOrNull(value: unknown): string | null {
  return typeof value === "string" && value.length > 0 && value.length <= LONGEST_NAME ? value : null;
}

function numberOrNull(value: unknown): number | null {
  return typeof value === "number" && Number.isFinite(value) ? value : null;
}

function bad(why: string): RecordReading {
  return { ok: false, why };
}
