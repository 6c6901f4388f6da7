import { randomUUID } from "node:crypto";
import type { Kysely } from "kysely";
import type { Tables } from "../store/tables";
import type { PlanVersionTable } from "../store/tables/plan-tables";
import { MOST_BYTES, MOST_VERSIONS } from "./library-limits";
import { bytesOf } from "./lock-library";
import { versionsToDrop } from "./versions-to-drop";

type NewVersion = Readonly<Pick<PlanVersionTable, "text" | "bytes" | "words" | "at" | "beside">>;

/**
 * Puts one more version beside a plan, within the caller's transaction; of too many, one goes. False where the teacher's library
 * has no room for `more` bytes: then nothing is done.
 */
export async function putVersion(
  all: Kysely<Tables>,
  { planId, ownerId, more }: { readonly planId: string; readonly ownerId: string; readonly more: number },
  version: NewVersion,
): Promise<boolean> {
  const before = await all
    .selectFrom("plan_version")
    .select(["id", "at", "words", "beside", "bytes"])
    .where("plan_id", "=", planId)
    .execute();
  const dropped = versionsToDrop(before, MOST_VERSIONS - 1);
  const freed = before.filter(({ id }) => dropped.includes(id)).reduce((sum, { bytes }) => sum + bytes, 0);
  if ((await bytesOf(all, ownerId)) - freed + more > MOST_BYTES) return false;
  if (dropped.length > 0) await all.deleteFrom("plan_version").where("id", "in", dropped).execute();
  await all
    .insertInto("plan_version")
    .values({ id: randomUUID(), plan_id: planId, ...version })
    .execute();
  return true;
}
