import { type No, no } from "../accounts/answer";
import type { Store } from "../store/store";
import { write } from "../store/write";
import { type Kept, type NotKept, putOver } from "./keep-plan";
import { lockLibrary } from "./lock-library";
import { readText } from "./read-text";

export type BackTo = {
  readonly ownerId: string;
  readonly planId: string;
  readonly versionId: string;
  /** The edition that was looked at when this was asked for. */
  readonly base: number;
};

const CHANGED = no(
  "changed",
  "This plan was changed meanwhile, and nothing was done. Load the page anew and look at it.",
);
const NO_VERSION = no("unknown", "This version is there no more. Load the page anew.");

/** Puts a version in the plan's place. What was the plan until now becomes a version too, and one gone back to that was the plan before stays. */
export async function goBack(
  store: Store,
  { ownerId, planId, versionId, base }: BackTo,
  now = new Date(),
): Promise<Kept | NotKept | No<"changed" | "unknown">> {
  const written = await write(store, async (all) => {
    await lockLibrary(all, store.engine, ownerId);
    const plan = await all
      .selectFrom("plan")
      .selectAll()
      .where("id", "=", planId)
      .where("owner_id", "=", ownerId)
      .executeTakeFirst();
    const version = await all
      .selectFrom("plan_version")
      .selectAll()
      .where("id", "=", versionId)
      .where("plan_id", "=", planId)
      .executeTakeFirst();
    if (!plan || !version) return NO_VERSION;
    const { text, bytes, words } = version;
    if (plan.text === text)
      return { ok: true, kept: "plan", edition: plan.edition, changedAt: plan.changed_at } as const;
    if (plan.edition !== base) return CHANGED;
    const read = readText(text);
    if (!read.ok) return read;
    return putOver(all, plan, { text, bytes, words, title: read.exercise.title }, now.toISOString());
  });
  return written.ok ? written.value : written;
}
