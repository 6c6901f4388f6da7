import type { Part } from "./error-parts";

export const RECORD_FORMAT = "plasterline.record/1";

/** The most records kept; older ones make room. */
export const MOST_RECORDS = 1000;

/** What a mark says of one skill. */
export type Evidence = {
  readonly skill: string;
  /** The part of the mark's error that told. */
  readonly part: Part;
  readonly right: boolean;
  /** The chance of its being right by luck. */
  readonly guess: number;
};

/** One mark of a finished exercise. Paper in millimetres, the stage in metres; mark minus truth; null where a mark has no such part. */
export type MarkRecord = {
  readonly point: string;
  readonly score: number;
  readonly within: boolean;
  readonly offMm: number | null;
  readonly toleranceMm: number;
  /** Positive upstage. */
  readonly depthMm: number | null;
  /** Positive to the viewer's right. */
  readonly acrossMm: number | null;
  /** Positive up. */
  readonly heightMm: number | null;
  readonly upstageM: number | null;
  readonly acrossM: number | null;
  readonly heightM: number | null;
  /** Drawn depth over true depth: 1 is right, less too shallow. Of a mark that means a place upstage. */
  readonly depthRatio: number | null;
  /** Hints taken before it. */
  readonly hints: number;
  readonly evidence: readonly Evidence[];
};

export type HabitRecord = {
  readonly id: string;
  readonly odds: number;
  readonly marks: readonly string[];
  readonly amount: number | null;
};

/** One finished exercise, as the app keeps it. */
export type AttemptRecord = {
  readonly format: typeof RECORD_FORMAT;
  readonly exercise: string;
  readonly version: number;
  /** When it was finished, ISO 8601. */
  readonly when: string;
  readonly score: number;
  readonly marks: readonly MarkRecord[];
  /** Habits claimed. */
  readonly habits: readonly HabitRecord[];
  /** Habits that the exercise can tell, claimed or not; null where that is not known. */
  readonly tells: readonly string[] | null;
};

/** Oldest first. Records of one moment stand in an order of their own, however they came. */
export function inOrder(records: readonly AttemptRecord[]): readonly AttemptRecord[] {
  return records
    .map((record) => ({ record, time: Date.parse(record.when), text: JSON.stringify(record) }))
    .sort((a, b) => a.time - b.time || compare(a.record.exercise, b.record.exercise) || compare(a.text, b.text))
    .map(({ record }) => record);
}

/** Two sets of records as one, oldest first: what both hold, once. The newest `MOST_RECORDS` of them. */
export function mergeRecords(some: readonly AttemptRecord[], more: readonly AttemptRecord[]): readonly AttemptRecord[] {
  const all = new Map([...some, ...more].map((record) => [JSON.stringify(record), record]));
  return inOrder([...all.values()]).slice(-MOST_RECORDS);
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
