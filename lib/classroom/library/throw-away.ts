import type { Store } from "../store/store";
import { type Written, write } from "../store/write";
import { TAKE_BACK_DAYS } from "./library-limits";

const DAY_MS = 24 * 60 * 60 * 1000;

/** Throws a plan away, or takes it back. What is thrown away is shared no more, and stays so when it is taken back. */
export async function throwAway(
  store: Store,
  planId: string,
  thrown: boolean,
  now = new Date(),
): Promise<Written<unknown>> {
  const change = thrown ? { thrown_at: now.toISOString(), share_word: null } : { thrown_at: null };
  return write(store, (all) => all.updateTable("plan").set(change).where("id", "=", planId).execute());
}

/** Erases a plan with its versions, or one of its versions, for good. */
export async function erasePlan(store: Store, planId: string, versionId: string | null): Promise<Written<unknown>> {
  return write(store, (all) =>
    versionId === null
      ? all.deleteFrom("plan").where("id", "=", planId).execute()
      : all.deleteFrom("plan_version").where("id", "=", versionId).where("plan_id", "=", planId).execute(),
  );
}

/** Erases the plans that were thrown away so long ago that nobody takes them back. */
export async function eraseThrownPlans(store: Store, now = new Date()): Promise<Written<unknown>> {
  const before = new Date(now.getTime() - TAKE_BACK_DAYS * DAY_MS).toISOString();
  return write(store, (all) => all.deleteFrom("plan").where("thrown_at", "<", before).execute());
}
