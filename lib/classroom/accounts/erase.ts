import type { Kysely } from "kysely";
import type { Store } from "../store/store";
import type { Tables } from "../store/tables";
import { type Written, write } from "../store/write";

const DAY_MS = 24 * 60 * 60 * 1000;

/** Erases a student's place in a class wholly: all their work there, and their account when it was their only place. */
export async function eraseMember(store: Store, memberId: string): Promise<Written<void>> {
  return write(store, async (all) => {
    const member = await all.selectFrom("member").select("user_id").where("id", "=", memberId).executeTakeFirst();
    await all.deleteFrom("guess").where("person", "=", memberId).execute();
    await all.deleteFrom("member").where("id", "=", memberId).execute();
    await eraseStrays(all, [member?.user_id ?? null]);
  });
}

/** Erases a class wholly: its homework, its students' work, and the accounts of those who have no other class. */
export async function eraseClass(store: Store, classId: string): Promise<Written<void>> {
  return write(store, async (all) => {
    const members = await all.selectFrom("member").select("user_id").where("class_id", "=", classId).execute();
    await all.deleteFrom("class").where("id", "=", classId).execute();
    await eraseStrays(
      all,
      members.map(({ user_id }) => user_id),
    );
  });
}

/** Erases work that is older than its class keeps it: hand-ins with their remarks, points by criteria, overrides and guesses. */
export async function eraseOldWork(store: Store, now = new Date()): Promise<Written<void>> {
  return write(store, async (all) => {
    const classes = await all.selectFrom("class").select(["id", "keep_days"]).where("keep_days", ">", 0).execute();
    for (const { id, keep_days } of classes) {
      const before = new Date(now.getTime() - keep_days * DAY_MS).toISOString();
      const members = all.selectFrom("member").select("id").where("class_id", "=", id);
      const votes = all.selectFrom("vote").select("id").where("class_id", "=", id);
      await all.deleteFrom("hand_in").where("member_id", "in", members).where("received_at", "<", before).execute();
      await all.deleteFrom("override").where("member_id", "in", members).where("at", "<", before).execute();
      await all.deleteFrom("guess").where("vote_id", "in", votes).where("received_at", "<", before).execute();
      await erasePoints(all, id, before);
    }
  });
}

/** Points by criteria have no date of their own: those of homework set before then go, where no drawing is left that they are for. */
async function erasePoints(all: Kysely<Tables>, classId: string, before: string): Promise<void> {
  const items = all
    .selectFrom("homework_item")
    .innerJoin("homework", "homework.id", "homework_item.homework_id")
    .select("homework_item.id")
    .where("homework.class_id", "=", classId)
    .where("homework.created_at", "<", before);
  await all
    .deleteFrom("criterion_score")
    .where("item_id", "in", items)
    .where(({ not, exists, selectFrom }) =>
      not(
        exists(
          selectFrom("hand_in")
            .select("hand_in.id")
            .whereRef("hand_in.item_id", "=", "criterion_score.item_id")
            .whereRef("hand_in.member_id", "=", "criterion_score.member_id"),
        ),
      ),
    )
    .execute();
}

/** Students' accounts that no place in any class needs any more. */
async function eraseStrays(all: Kysely<Tables>, userIds: readonly (string | null)[]): Promise<void> {
  for (const userId of userIds) {
    if (userId === null) continue;
    const place = await all.selectFrom("member").select("id").where("user_id", "=", userId).limit(1).executeTakeFirst();
    if (place) continue;
    await all.deleteFrom("user").where("id", "=", userId).where("role", "=", "student").execute();
  }
}
