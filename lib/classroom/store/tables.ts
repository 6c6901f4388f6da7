import type {
  AccountTable,
  OneTimeWordTable,
  SessionTable,
  SettingTable,
  TriesTable,
  UserTable,
  VerificationTable,
} from "./tables/account-tables";
import type { ClassTable, GuessTable, MemberTable, VoteTable } from "./tables/class-tables";
import type {
  CriterionScoreTable,
  HandInTable,
  HomeworkItemTable,
  HomeworkMemberTable,
  HomeworkTable,
  OverrideTable,
  RemarkTable,
} from "./tables/homework-tables";
import type { PlanTable, PlanVersionTable } from "./tables/plan-tables";

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
  readonly plan: PlanTable;
  readonly plan_version: PlanVersionTable;
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
  { name: "plan", key: ["id"] },
  { name: "plan_version", key: ["id"] },
];
