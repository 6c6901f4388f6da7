import { createHash, randomUUID } from "node:crypto";
import type { Kysely } from "kysely";
import type { Store } from "../store/store";
import type { Tables } from "../store/tables";
import type { OneTimeWordTable } from "../store/tables/account-tables";
import { type Written, write } from "../store/write";
import { type No, no, tooMany } from "./answer";
import { cleanCode } from "./as-written";
import { drawLetters } from "./code";
import { countTry, giveBack, WORD_LIMIT } from "./tries";

/** Letters of eighteen: 83 bits, so that neither guessing nor the digest leads to a word while it works. */
const LETTERS = 20;
/** A word that has run out, or was used, is shown for so long and then forgotten. */
const SHOWN_MS = 30 * 24 * 60 * 60 * 1000;

export type WordKind = OneTimeWordTable["kind"];

type NewWord = {
  readonly kind: WordKind;
  readonly madeBy: string | null;
  readonly forUser: string | null;
  readonly note: string;
  readonly validMs: number;
};

/** Makes a word that works once. It is told this one time; the store keeps a digest. */
export async function putWord(
  store: Store,
  { kind, madeBy, forUser, note, validMs }: NewWord,
  now = new Date(),
): Promise<Written<string>> {
  const word = drawLetters(LETTERS);
  return write(store, async (all) => {
    const forgotten = new Date(now.getTime() - SHOWN_MS).toISOString();
    await all.deleteFrom("one_time_word").where("expires_at", "<", forgotten).execute();
    // Of several ways back for one person the newest counts.
    if (forUser !== null) await endWaysBack(all, forUser);
    await all
      .insertInto("one_time_word")
      .values({
        id: randomUUID(),
        kind,
        digest: digestOf(word),
        made_by: madeBy,
        for_user: forUser,
        note,
        made_at: now.toISOString(),
        expires_at: new Date(now.getTime() + validMs).toISOString(),
        used_at: null,
      })
      .execute();
    return word;
  });
}

export const NO_WORD = "That is no word that works. It may have been used, have run out, or have been withdrawn.";

/** Looks whether a word works, within the limit by address. It is not used up by that. */
export async function tryWord(
  store: Store,
  kind: WordKind,
  { word, address }: { readonly word: string; readonly address: string },
  now = new Date(),
): Promise<{ readonly ok: true } | No<"no-word" | "too-many">> {
  const tried = await countTry(store, WORD_LIMIT, address, now);
  if (!tried.allowed) return tooMany(tried.waitS);
  const found = await store.db
    .selectFrom("one_time_word")
    .select("id")
    .where("digest", "=", digestOf(word))
    .where("kind", "=", kind)
    .where("used_at", "is", null)
    .where("expires_at", ">", now.toISOString())
    .executeTakeFirst();
  if (!found) return no("no-word", NO_WORD);
  await giveBack(store, WORD_LIMIT, address);
  return { ok: true };
}

/** Uses a word up, within the caller's transaction: of two who use it at the same moment, one does. */
export async function spendWord(
  all: Kysely<Tables>,
  kind: WordKind,
  word: string,
  now = new Date(),
): Promise<Pick<OneTimeWordTable, "id" | "for_user"> | undefined> {
  return all
    .updateTable("one_time_word")
    .set({ used_at: now.toISOString() })
    .where("digest", "=", digestOf(word))
    .where("kind", "=", kind)
    .where("used_at", "is", null)
    .where("expires_at", ">", now.toISOString())
    .returning(["id", "for_user"])
    .executeTakeFirst();
}

/** Ends the ways back that a person has and has not used, within the caller's transaction. */
export async function endWaysBack(all: Kysely<Tables>, userId: string): Promise<void> {
  await all
    .deleteFrom("one_time_word")
    .where("kind", "=", "way-back")
    .where("for_user", "=", userId)
    .where("used_at", "is", null)
    .execute();
}

function digestOf(word: string): string {
  return createHash("sha256").update(cleanCode(word)).digest("base64url");
}
