import type { Kysely } from "kysely";
import type { Store } from "../store/store";
import type { Tables } from "../store/tables";
import { type Written, write } from "../store/write";
import { countsLate, dueAt } from "./due";

/** Judges anew what was handed in of a homework, by the dates that are due now: for all of its students, or for one. */
export async function judgeLateness(all: Kysely<Tables>, homeworkId: string, memberId?: string): Promise<void> {
  const homework = await all.selectFrom("homework").selectAll().where("id", "=", homeworkId).executeTakeFirst();
  if (!homework) return;
  const terms = await all.selectFrom("homework_member").selectAll().where("homework_id", "=", homeworkId).execute();
  const ofHomework = all
    .selectFrom("hand_in")
    .innerJoin("homework_item", "homework_item.id", "hand_in.item_id")
    .select(["hand_in.id", "hand_in.member_id", "received_at", "in_time_reason", "late"])
    .where("homework_item.homework_id", "=", homeworkId);
  const rows = await (memberId === undefined ? ofHomework : ofHomework.where("member_id", "=", memberId)).execute();
  for (const row of rows) {
    const own = terms.find(({ member_id }) => member_id === row.member_id);
    const late = countsLate(dueAt(homework, own), row) ? 1 : 0;
    if (late !== row.late) await all.updateTable("hand_in").set({ late }).where("id", "=", row.id).execute();
  }
}

/** Has late work count as in time, with the reason why; null has it judged by the dates again. */
export async function countInTime(
  store: Store,
  { handInId, reason }: { readonly handInId: string; readonly reason: string | null },
): Promise<Written<void>> {
  return write(store, async (all) => {
    const row = await all
      .updateTable("hand_in")
      .set({ in_time_reason: reason })
      .where("id", "=", handInId)
      .returning(["item_id", "member_id"])
      .executeTakeFirst();
    if (!row) return;
    const { homework_id } = await all
      .selectFrom("homework_item")
      .select("homework_id")
      .where("id", "=", row.item_id)
      .executeTakeFirstOrThrow();
    await judgeLateness(all, homework_id, row.member_id);
  });
}
