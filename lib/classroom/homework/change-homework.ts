import { randomUUID } from "node:crypto";
import { type No, no } from "../accounts/answer";
import type { Store } from "../store/store";
import { type Written, write } from "../store/write";
import { judgeLateness } from "./judge-lateness";
import { lockHomework } from "./lock-homework";
import type { HomeworkSet } from "./set-homework";

/** Sets the same work to a class once more, to all in it, with a due date of its own; nothing of the first changes. */
export async function reuseHomework(
  store: Store,
  homeworkId: string,
  { classId, dueAt }: { readonly classId: string; readonly dueAt: string | null },
  now = new Date(),
): Promise<HomeworkSet | No<"gone" | "no-date">> {
  const before = await store.db.selectFrom("homework").selectAll().where("id", "=", homeworkId).executeTakeFirst();
  if (!before) return no("gone", "This homework is there no more. Load the page anew.");
  if (before.feedback === "after-due" && dueAt === null)
    return no("no-date", "Corrections are shown after the due date here, so choose one.");
  const items = await store.db
    .selectFrom("homework_item")
    .selectAll()
    .where("homework_id", "=", homeworkId)
    .where("taken_out_at", "is", null)
    .execute();
  const id = randomUUID();
  const put = await write(store, async (all) => {
    await all
      .insertInto("homework")
      .values({
        ...before,
        id,
        class_id: classId,
        due_at: dueAt,
        to_whom: "all",
        created_at: now.toISOString(),
        archived: 0,
      })
      .execute();
    await all
      .insertInto("homework_item")
      .values(items.map((item) => ({ ...item, id: randomUUID(), homework_id: id })))
      .execute();
  });
  return put.ok ? { ok: true, homeworkId: id } : put;
}

/** Puts homework away, out of every list of what is due, or takes it out again. What was handed in stays. */
export async function archiveHomework(store: Store, homeworkId: string, archived: boolean): Promise<Written<void>> {
  return write(store, async (all) => {
    await all
      .updateTable("homework")
      .set({ archived: archived ? 1 : 0 })
      .where("id", "=", homeworkId)
      .execute();
  });
}

export type StudentTerms = { readonly dueAt: string | null; readonly excused: boolean };

/** Agrees with one student on another due date (null for that of all), or excuses them. Work already in is judged by it. */
export async function agreeTerms(
  store: Store,
  homeworkId: string,
  memberId: string,
  { dueAt, excused }: StudentTerms,
): Promise<Written<void>> {
  const terms = { due_at: dueAt, excused: excused ? (1 as const) : (0 as const) };
  return write(store, async (all) => {
    await lockHomework(all, store.engine, homeworkId, "alone");
    await all
      .insertInto("homework_member")
      .values({ homework_id: homeworkId, member_id: memberId, ...terms, assigned: 0 })
      .onConflict((clash) => clash.columns(["homework_id", "member_id"]).doUpdateSet(terms))
      .execute();
    await judgeLateness(all, homeworkId, memberId);
  });
}
