import type { Store } from "../store/store";
import { type Written, write } from "../store/write";
import { readCriteria } from "./read-criteria";

type Place = { readonly itemId: string; readonly memberId: string };

/** Has a teacher's score stand in the place of the program's, with the reason why. */
export function overrideScore(
  store: Store,
  { itemId, memberId, score, reason }: Place & { readonly score: number; readonly reason: string },
  now: string,
): Promise<Written<unknown>> {
  const kept = { score, reason, at: now };
  return write(store, (all) =>
    all
      .insertInto("override")
      .values({ item_id: itemId, member_id: memberId, ...kept })
      .onConflict((clash) => clash.columns(["item_id", "member_id"]).doUpdateSet(kept))
      .execute(),
  );
}

/** Lets the program's own score stand again. */
export function takeBackOverride(store: Store, { itemId, memberId }: Place): Promise<Written<unknown>> {
  return write(store, (all) =>
    all.deleteFrom("override").where("item_id", "=", itemId).where("member_id", "=", memberId).execute(),
  );
}

/** Excuses a student from a homework, or no longer; a due date of the student's own stays as it was. */
export function excuse(
  store: Store,
  {
    homeworkId,
    memberId,
    excused,
  }: { readonly homeworkId: string; readonly memberId: string; readonly excused: boolean },
): Promise<Written<unknown>> {
  const kept = excused ? 1 : 0;
  return write(store, (all) =>
    all
      .insertInto("homework_member")
      .values({ homework_id: homeworkId, member_id: memberId, due_at: null, excused: kept, assigned: 0 })
      .onConflict((clash) => clash.columns(["homework_id", "member_id"]).doUpdateSet({ excused: kept }))
      .execute(),
  );
}

type Weight = { readonly id: string; readonly weight: number };

/** Sets the weights of a class's homework and exercises; what is not of the class is passed over. */
export function setWeights(
  store: Store,
  {
    classId,
    homework,
    items,
  }: { readonly classId: string; readonly homework: readonly Weight[]; readonly items: readonly Weight[] },
): Promise<Written<unknown>> {
  return write(store, async (all) => {
    for (const { id, weight } of homework)
      await all.updateTable("homework").set({ weight }).where("id", "=", id).where("class_id", "=", classId).execute();
    const ofClass = all.selectFrom("homework").select("id").where("class_id", "=", classId);
    for (const { id, weight } of items)
      await all
        .updateTable("homework_item")
        .set({ weight })
        .where("id", "=", id)
        .where("homework_id", "in", ofClass)
        .execute();
  });
}

export type CriterionAnswer =
  | { readonly ok: true }
  | { readonly ok: false; readonly reason: string; readonly sentence: string };

/** Gives points by one of the homework's own criteria, at most as many as it has; null takes them back. */
export async function scoreCriterion(
  store: Store,
  { itemId, memberId, criterion, points }: Place & { readonly criterion: string; readonly points: number | null },
): Promise<CriterionAnswer> {
  const written = await write(store, async (all): Promise<CriterionAnswer> => {
    const homework = await all
      .selectFrom("homework_item")
      .innerJoin("homework", "homework.id", "homework_item.homework_id")
      .select("homework.criteria")
      .where("homework_item.id", "=", itemId)
      .executeTakeFirst();
    const known = readCriteria(homework?.criteria ?? "[]").find(({ name }) => name === criterion);
    if (!known) return { ok: false, reason: "unknown", sentence: "The homework has no such criterion any more." };
    if (points !== null && points > known.points)
      return { ok: false, reason: "too-many-points", sentence: `${criterion} gives at most ${known.points}.` };
    if (points === null)
      await all
        .deleteFrom("criterion_score")
        .where("item_id", "=", itemId)
        .where("member_id", "=", memberId)
        .where("criterion", "=", criterion)
        .execute();
    else
      await all
        .insertInto("criterion_score")
        .values({ item_id: itemId, member_id: memberId, criterion, points })
        .onConflict((clash) => clash.columns(["item_id", "member_id", "criterion"]).doUpdateSet({ points }))
        .execute();
    return { ok: true };
  });
  return written.ok ? written.value : written;
}
