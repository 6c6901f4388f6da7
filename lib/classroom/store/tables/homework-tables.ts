import type { YesNo } from "./yes-no";

export type HomeworkTable = {
  id: string;
  class_id: string;
  title: string;
  due_at: string | null;
  /** 0 is any number. */
  attempts: number;
  counts: "best" | "last";
  feedback: "at-once" | "after-due";
  /** Null keeps each exercise's own. */
  strictness: "thumbnail" | "sketch" | "drafted" | null;
  hints: "allowed" | "none";
  to_whom: "all" | "some";
  weight: number;
  /** JSON: `[{ name, points }]`. */
  criteria: string;
  created_at: string;
  archived: YesNo;
};

export type HomeworkItemTable = {
  id: string;
  homework_id: string;
  place: number;
  source: "course" | "variant" | "own";
  exercise_id: string | null;
  unit: string | null;
  level: number | null;
  /** JSON: the exercise file as it was set. */
  exercise: string | null;
  weight: number;
  /** When the teacher took it out of the homework; null while it is in. What was handed in of it stays. */
  taken_out_at: string | null;
};

export type HomeworkMemberTable = {
  homework_id: string;
  member_id: string;
  due_at: string | null;
  excused: YesNo;
  assigned: YesNo;
};

export type HandInTable = {
  /** Made by the student's browser, so that the same work sent twice is kept once. */
  id: string;
  item_id: string;
  member_id: string;
  /** JSON: the exercise as the student had it. */
  exercise: string;
  /** JSON: the set of marks. */
  marks: string;
  score: number | null;
  /** JSON: the grade. */
  grade: string;
  engine_version: string;
  /** By the student's clock, for the record only. */
  made_at: string;
  received_at: string;
  /** 0 as well where the teacher counts late work as in time. */
  late: YesNo;
  /** Why the teacher counts it as in time though it came in late; null where nobody said so. */
  in_time_reason: string | null;
};

export type OverrideTable = { item_id: string; member_id: string; score: number; reason: string; at: string };

export type RemarkTable = {
  id: string;
  hand_in_id: string;
  /** JSON: lines drawn in red pencil, in metres of the picture. */
  strokes: string;
  words: string;
  at: string;
};

export type CriterionScoreTable = { item_id: string; member_id: string; criterion: string; points: number };
