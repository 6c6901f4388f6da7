import type { ColumnType } from "kysely";

/**
 * What the store keeps, column by column. Both drivers give every column of our own tables back in the same JavaScript
 * type: ids and times are text (times ISO 8601 in UTC with milliseconds, so that they sort as text), counts are 32-bit
 * whole numbers, scores are doubles, yes and no are 1 and 0, and what is kept as JSON is text.
 *
 * The first four tables belong to the library that keeps the accounts; their times and yes-or-nos come back as each driver
 * has them, and only that library reads them.
 */
export type Tables = {
  readonly user: UserTable;
  readonly session: SessionTable;
  readonly account: AccountTable;
  readonly verification: VerificationTable;
  readonly setting: SettingTable;
  readonly tries: TriesTable;
  readonly one_time_word: OneTimeWordTable;
  readonly class: ClassTable;
  readonly member: MemberTable;
  readonly homework: HomeworkTable;
  readonly homework_item: HomeworkItemTable;
  readonly homework_member: HomeworkMemberTable;
  readonly hand_in: HandInTable;
  readonly override: OverrideTable;
  readonly remark: RemarkTable;
  readonly criterion_score: CriterionScoreTable;
  readonly vote: VoteTable;
  readonly guess: GuessTable;
};

export type TableName = keyof Tables;

/**
 * Every table with the columns that tell its rows apart, each after those it points to: the order to fill them in.
 * Backwards, the order to empty them in.
 */
export const TABLES: readonly { readonly name: TableName; readonly key: readonly string[] }[] = [
  { name: "user", key: ["id"] },
  { name: "session", key: ["id"] },
  { name: "account", key: ["id"] },
  { name: "verification", key: ["id"] },
  { name: "setting", key: ["name"] },
  { name: "tries", key: ["key"] },
  { name: "one_time_word", key: ["id"] },
  { name: "class", key: ["id"] },
  { name: "member", key: ["id"] },
  { name: "homework", key: ["id"] },
  { name: "homework_item", key: ["id"] },
  { name: "homework_member", key: ["homework_id", "member_id"] },
  { name: "hand_in", key: ["id"] },
  { name: "override", key: ["item_id", "member_id"] },
  { name: "remark", key: ["id"] },
  { name: "criterion_score", key: ["item_id", "member_id", "criterion"] },
  { name: "vote", key: ["id"] },
  { name: "guess", key: ["vote_id", "round", "person"] },
];

/** 0 no, 1 yes. */
export type YesNo = 0 | 1;

type DriversTime = ColumnType<string | Date>;
type DriversYesNo = ColumnType<number | boolean>;

export type UserTable = {
  id: string;
  name: string;
  email: string;
  emailVerified: DriversYesNo;
  image: string | null;
  createdAt: DriversTime;
  updatedAt: DriversTime;
  role: "teacher" | "student";
};

type SessionTable = {
  id: string;
  expiresAt: DriversTime;
  token: string;
  createdAt: DriversTime;
  updatedAt: DriversTime;
  ipAddress: string | null;
  userAgent: string | null;
  userId: string;
};

type AccountTable = {
  id: string;
  accountId: string;
  providerId: string;
  userId: string;
  accessToken: string | null;
  refreshToken: string | null;
  idToken: string | null;
  accessTokenExpiresAt: DriversTime | null;
  refreshTokenExpiresAt: DriversTime | null;
  scope: string | null;
  password: string | null;
  createdAt: DriversTime;
  updatedAt: DriversTime;
};

type VerificationTable = {
  id: string;
  identifier: string;
  value: string;
  expiresAt: DriversTime;
  createdAt: DriversTime;
  updatedAt: DriversTime;
};

type SettingTable = { name: string; value: string };

/** Tries within a window of time: of a password, a class code. `key` is a digest and tells nobody's name or address. */
type TriesTable = { key: string; count: number; since: string };

export type OneTimeWordTable = {
  id: string;
  kind: "invitation" | "way-back";
  /** The word itself is kept nowhere. */
  digest: string;
  /** The teacher who made it; null for one that was made at the server. */
  made_by: string | null;
  /** Whose way back it is, or the teacher an invitation has let in. */
  for_user: string | null;
  /** What the one who made it wrote beside it, to know it by. */
  note: string;
  made_at: string;
  expires_at: string;
  used_at: string | null;
};

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
