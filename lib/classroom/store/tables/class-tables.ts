import type { YesNo } from "./yes-no";

export type ClassTable = {
  id: string;
  teacher_id: string;
  title: string;
  /** Six letters to join by. */
  code: string;
  /** Days after which work is erased; 0 keeps it until the teacher erases it. */
  keep_days: number;
  created_at: string;
  archived: YesNo;
};

export type MemberTable = {
  id: string;
  class_id: string;
  /** The student who took the place; null while only the teacher's list knows the name. */
  user_id: string | null;
  name: string;
  number: string | null;
  joined_at: string | null;
  removed: YesNo;
};

export type VoteTable = {
  id: string;
  class_id: string;
  /** JSON: the exercise. */
  exercise: string;
  point: string;
  round: number;
  state: "open" | "revealed" | "closed";
  code: string;
  opened_at: string;
};

export type GuessTable = {
  vote_id: string;
  round: number;
  /** A member's id, or a guest's token. */
  person: string;
  /** JSON: `[X, Z]` in metres of the picture. */
  at: string;
  received_at: string;
};
