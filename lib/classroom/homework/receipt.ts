import type { Kysely } from "kysely";
import type { Grade } from "../../grading/grade";
import type { Tables } from "../store/tables";
import type { HandInTable, HomeworkItemTable, HomeworkTable } from "../store/tables/homework-tables";
import { dueAt, isReleased, type Terms } from "./due";

type HandInRow = Readonly<HandInTable>;

/** What a student may know of one hand-in: score and grade only once they are not kept back. */
export type Receipt = {
  readonly id: string;
  /** By the server's clock. */
  readonly receivedAt: string;
  readonly late: boolean;
  readonly dueAt: string | null;
  /** How many times this exercise has been handed in. */
  readonly handedIn: number;
  /** Null for any number. */
  readonly attemptsLeft: number | null;
  readonly result: { readonly score: number | null; readonly grade: Grade } | null;
};

export type Work = {
  readonly homework: Readonly<HomeworkTable>;
  readonly item: Readonly<HomeworkItemTable>;
  readonly memberId: string;
  readonly terms: Terms;
};

/** What was handed in of one exercise by one student, the oldest first. */
export async function handInsOf(db: Kysely<Tables>, itemId: string, memberId: string): Promise<readonly HandInRow[]> {
  return db
    .selectFrom("hand_in")
    .selectAll()
    .where("item_id", "=", itemId)
    .where("member_id", "=", memberId)
    .orderBy("received_at")
    .orderBy("id")
    .execute();
}

/** The receipt of one hand-in; undefined when it is there no more. */
export async function receiptOf(
  db: Kysely<Tables>,
  { homework, item, memberId, terms }: Work,
  now: Date,
  id: string,
): Promise<Receipt | undefined> {
  const rows = await handInsOf(db, item.id, memberId);
  const row = rows.find((each) => each.id === id);
  if (!row) return undefined;
  const released = isReleased(homework, terms, now);
  return {
    id,
    receivedAt: row.received_at,
    late: row.late === 1,
    dueAt: dueAt(homework, terms),
    handedIn: rows.length,
    attemptsLeft: attemptsLeft(homework.attempts, rows.length),
    result: released ? { score: row.score, grade: JSON.parse(row.grade) as Grade } : null,
  };
}

/** Null for any number. */
export function attemptsLeft(attempts: number, used: number): number | null {
  return attempts === 0 ? null : Math.max(0, attempts - used);
}

/** The hand-in whose score counts, of some in the order they came: the best, of equals the last; or the last. */
export function countingOf<Row extends Readonly<Pick<HandInTable, "score">>>(
  rows: readonly Row[],
  counts: HomeworkTable["counts"],
): Row | undefined {
  if (counts === "last") return rows.at(-1);
  return rows.reduce<Row | undefined>(
    (best, row) => (best && (best.score ?? 0) > (row.score ?? 0) ? best : row),
    undefined,
  );
}
