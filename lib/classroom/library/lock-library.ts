import type { Kysely } from "kysely";
import type { Engine } from "../store/store";
import type { Tables } from "../store/tables";

/**
 * Lets one change at a time at a teacher's library, until the transaction ends: two that come together are counted, and
 * compared with each other. SQLite has one writer anyway.
 */
export async function lockLibrary(all: Kysely<Tables>, engine: Engine, ownerId: string): Promise<void> {
  if (engine === "sqlite") return;
  await all.selectFrom("user").select("id").where("id", "=", ownerId).forNoKeyUpdate().executeTakeFirst();
}

/** How much room a teacher's plans and versions take. */
export async function bytesOf(all: Kysely<Tables>, ownerId: string): Promise<number> {
  const plans = await all
    .selectFrom("plan")
    .select(({ fn }) => fn.sum<number | string | null>("bytes").as("bytes"))
    .where("owner_id", "=", ownerId)
    .executeTakeFirst();
  const versions = await all
    .selectFrom("plan_version")
    .innerJoin("plan", "plan.id", "plan_version.plan_id")
    .select(({ fn }) => fn.sum<number | string | null>("plan_version.bytes").as("bytes"))
    .where("plan.owner_id", "=", ownerId)
    .executeTakeFirst();
  return Number(plans?.bytes ?? 0) + Number(versions?.bytes ?? 0);
}
