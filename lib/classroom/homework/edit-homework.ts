import { randomUUID } from "node:crypto";
import type { Insertable, Kysely } from "kysely";
import { type No, no } from "../accounts/answer";
import { type Preview, prepareRegrade } from "../gradebook/regrade";
import type { Store } from "../store/store";
import type { Tables } from "../store/tables";
import type { HomeworkItemTable } from "../store/tables/homework-tables";
import { write } from "../store/write";
import { countHidden } from "./count-hidden";
import { ENGINE_VERSION } from "./engine-version";
import { judgeLateness } from "./judge-lateness";
import { lockHomework } from "./lock-homework";
import { type ItemPlan, planItems } from "./plan-items";
import type { ChangeHomework } from "./requests";
import { type CourseText, findStudents, itemRow, type NotSet, readRules } from "./set-homework";

/** What a change would bring about that its teacher has to agree to first. */
export type ToAgree = {
  /** Drawings that students and the gradebook would show no more. They are kept, and come back with their exercise. */
  readonly hides: number;
  /** The scores that another strictness would change; null where none was handed in or it stays. */
  readonly preview: Preview | null;
};

export type Edited =
  | { readonly ok: true; readonly done: true }
  | ({ readonly ok: true; readonly done: false } & ToAgree)
  | NotSet
  | No<"gone" | "unknown" | "changed">;

const GONE = no("gone", "This homework is there no more. Load the page anew.");
const CHANGED = no(
  "changed",
  "Something was handed in or changed meanwhile. Nothing was changed; look at it and try once more.",
);

/**
 * Changes homework that is set, all of it or nothing. Nothing handed in is lost: an exercise taken out keeps its drawings and
 * can be put back. Where drawings would be hidden or scores changed, nothing is done until just that was agreed to. What came
 * in is judged late or not by the new date.
 */
export async function editHomework(
  store: Store,
  wanted: ChangeHomework,
  courseText: CourseText,
  now = new Date(),
): Promise<Edited> {
  const { db } = store;
  const { homeworkId, agreed } = wanted;
  const before = await db.selectFrom("homework").selectAll().where("id", "=", homeworkId).executeTakeFirst();
  if (!before) return GONE;
  const rules = readRules(wanted);
  if (!rules.ok) return rules;
  const items = await db.selectFrom("homework_item").selectAll().where("homework_id", "=", homeworkId).execute();
  const plan = planItems(items, wanted.items);
  if (!plan.ok) return plan;
  const fresh: Insertable<HomeworkItemTable>[] = [];
  for (const { chosen, place } of plan.add) {
    const row = await itemRow(chosen, place, courseText);
    if ("ok" in row) return row;
    fresh.push({ ...row, id: randomUUID(), homework_id: homeworkId });
  }
  const to = await findStudents(store, { classId: before.class_id, toWhom: wanted.toWhom });
  if ("ok" in to) return to;
  const regrade =
    before.strictness === wanted.strictness
      ? null
      : await prepareRegrade(store, { homeworkId, strictness: wanted.strictness ?? "exercise", course: null });
  const preview = regrade && regrade.preview.all > 0 ? regrade.preview : null;

  const written = await write(store, async (all): Promise<Edited> => {
    const locked = await lockHomework(all, store.engine, homeworkId, "alone");
    if (!locked) return GONE;
    if (locked.strictness !== before.strictness) return CHANGED;
    const hides = await countHidden(all, locked, { takenOut: plan.takeOut, to });
    if (hides !== agreed.hides || (preview !== null && preview.seal !== agreed.seal))
      return { ok: true, done: false, hides, preview };
    if (regrade && !(await regrade.put(all, ENGINE_VERSION))) return CHANGED;
    await all
      .updateTable("homework")
      .set({ ...rules.columns, to_whom: to.kind })
      .where("id", "=", homeworkId)
      .execute();
    await putItems(all, plan, now);
    if (fresh.length > 0) await all.insertInto("homework_item").values(fresh).execute();
    if (to.kind === "some") await assign(all, homeworkId, to.memberIds);
    await judgeLateness(all, homeworkId);
    return { ok: true, done: true };
  });
  return written.ok ? written.value : written;
}

async function putItems(all: Kysely<Tables>, { keep, takeOut }: ItemPlan, now: Date): Promise<void> {
  for (const { itemId, place, weight } of keep)
    await all
      .updateTable("homework_item")
      .set({ place, weight, taken_out_at: null })
      .where("id", "=", itemId)
      .execute();
  if (takeOut.length > 0)
    await all
      .updateTable("homework_item")
      .set({ taken_out_at: now.toISOString() })
      .where("id", "in", takeOut)
      .execute();
}

/** A date or an excuse that was agreed with a student stays, whether the work is theirs or not. */
async function assign(all: Kysely<Tables>, homeworkId: string, memberIds: readonly string[]): Promise<void> {
  await all.updateTable("homework_member").set({ assigned: 0 }).where("homework_id", "=", homeworkId).execute();
  await all
    .insertInto("homework_member")
    .values(
      memberIds.map((member_id) => ({
        homework_id: homeworkId,
        member_id,
        due_at: null,
        excused: 0 as const,
        assigned: 1 as const,
      })),
    )
    .onConflict((clash) => clash.columns(["homework_id", "member_id"]).doUpdateSet({ assigned: 1 }))
    .execute();
}
