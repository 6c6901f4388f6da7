import { type No, no, tooMany } from "../accounts/answer";
import { cleanCode } from "../accounts/as-written";
import { drawLetters } from "../accounts/code";
import { countTry, giveBack, WORD_LIMIT } from "../accounts/tries";
import type { Store } from "../store/store";
import { type Written, write } from "../store/write";
import { type Kept, keepPlan, type NotKept } from "./keep-plan";

/** Letters of eighteen: 83 bits, as one-time words have. */
const LETTERS = 20;

/**
 * Shares a plan by a word, or ends that. The word that works already stays the same; after an end there is another. It is kept
 * as it is: its owner wants to send it again, and it opens a copy of one plan, which lies beside it.
 *
 * @returns the word; null once nothing is shared, and for a plan that is thrown away
 */
export async function sharePlan(store: Store, planId: string, shared: boolean): Promise<Written<string | null>> {
  return write(store, async (all) => {
    await all
      .updateTable("plan")
      .set({ share_word: shared ? drawLetters(LETTERS) : null })
      .where("id", "=", planId)
      .where("thrown_at", "is", null)
      .where("share_word", shared ? "is" : "is not", null)
      .execute();
    const row = await all.selectFrom("plan").select("share_word").where("id", "=", planId).executeTakeFirst();
    return row?.share_word ?? null;
  });
}

export type SharedPlan = {
  readonly ok: true;
  readonly ownerId: string;
  /** The name of whoever shares it. */
  readonly by: string;
  readonly title: string;
  readonly text: string;
  readonly changedAt: string;
};

const NOT_SHARED = no(
  "no-word",
  "This link leads to no plan. Its owner may have ended it or thrown the plan away, or it did not arrive whole.",
);

type Try = { readonly word: string; readonly address: string };

/** The plan that a word opens, as it is now, within the limit of wrong words by address. */
export async function openShared(
  store: Store,
  { word, address }: Try,
  now = new Date(),
): Promise<SharedPlan | No<"no-word" | "too-many">> {
  const tried = await countTry(store, WORD_LIMIT, address, now);
  if (!tried.allowed) return tooMany(tried.waitS);
  const found = await store.db
    .selectFrom("plan")
    .innerJoin("user", "user.id", "plan.owner_id")
    .select(["plan.owner_id", "user.name", "plan.title", "plan.text", "plan.changed_at"])
    .where("plan.share_word", "=", cleanCode(word))
    .where("plan.thrown_at", "is", null)
    .executeTakeFirst();
  if (!found) return NOT_SHARED;
  await giveBack(store, WORD_LIMIT, address);
  const { owner_id, name, title, text, changed_at } = found;
  return { ok: true, ownerId: owner_id, by: name, title, text, changedAt: changed_at };
}

/** Puts a copy of a shared plan into the library of whoever asks. What becomes of the one or the other stays there. */
export async function copyShared(
  store: Store,
  { planId, ownerId, ...tried }: Try & { readonly planId: string; readonly ownerId: string },
  now = new Date(),
): Promise<Kept | NotKept | No<"no-word" | "too-many">> {
  const shared = await openShared(store, tried, now);
  if (!shared.ok) return shared;
  const words = `From ${shared.by}`;
  return keepPlan(store, { ownerId, planId, base: 0, text: shared.text, words }, now);
}
