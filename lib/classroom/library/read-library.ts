import type { Store } from "../store/store";
import type { PlanTable, PlanVersionTable } from "../store/tables/plan-tables";

export type PlanRow = Readonly<
  Pick<PlanTable, "id" | "title" | "words" | "edition" | "changed_at" | "thrown_at" | "share_word">
>;
export type VersionRow = Readonly<Pick<PlanVersionTable, "id" | "at" | "words" | "beside">>;

const IN_LISTS = ["id", "title", "words", "edition", "changed_at", "thrown_at", "share_word"] as const;

/** A teacher's plans, the one changed last first; those thrown away among them. */
export async function plansOfTeacher({ db }: Store, ownerId: string): Promise<readonly PlanRow[]> {
  const rows = await db.selectFrom("plan").select(IN_LISTS).where("owner_id", "=", ownerId).execute();
  return rows.sort((a, b) => (a.changed_at < b.changed_at || (a.changed_at === b.changed_at && a.id < b.id) ? 1 : -1));
}

/** One plan with its text; nothing where there is none. */
export async function planWithText(
  { db }: Store,
  planId: string,
): Promise<(PlanRow & Readonly<Pick<PlanTable, "text">>) | undefined> {
  return db
    .selectFrom("plan")
    .select([...IN_LISTS, "text"])
    .where("id", "=", planId)
    .executeTakeFirst();
}

/** The earlier versions of a plan, the newest first. */
export async function versionsOfPlan({ db }: Store, planId: string): Promise<readonly VersionRow[]> {
  const rows = await db
    .selectFrom("plan_version")
    .select(["id", "at", "words", "beside"])
    .where("plan_id", "=", planId)
    .execute();
  return rows.sort((a, b) => (a.at < b.at || (a.at === b.at && a.id < b.id) ? 1 : -1));
}

/** The text of a plan, or of one of its versions; nothing where there is none. */
export async function textOf({ db }: Store, planId: string, versionId: string | null): Promise<string | undefined> {
  const found =
    versionId === null
      ? await db.selectFrom("plan").select("text").where("id", "=", planId).executeTakeFirst()
      : await db
          .selectFrom("plan_version")
          .select("text")
          .where("id", "=", versionId)
          .where("plan_id", "=", planId)
          .executeTakeFirst();
  return found?.text;
}
