import { createHash } from "node:crypto";
import { sql } from "kysely";
import type { Store } from "../store/store";

/** At most so many tries within so long a time. */
export type Limit = { readonly name: string; readonly most: number; readonly seconds: number };

const QUARTER_HOUR_S = 15 * 60;

/** Wrong passwords or passphrases for one account from one address: whoever guesses shuts out only where they sit. */
export const HERE_LIMIT: Limit = { name: "account-here", most: 10, seconds: QUARTER_HOUR_S };
/**
 * The same from all addresses together, where it takes ten that are used up to shut an account to the others: a hundred wrong
 * ones, which NIST SP 800-63B-4, section 3.2.2, sets as the most in a row (from memory). A guesser with any number of addresses
 * gets ten thousand a day, of the forty thousand million that a passphrase is drawn from.
 */
export const ACCOUNT_LIMIT: Limit = { name: "account", most: 100, seconds: QUARTER_HOUR_S };
/** Wrong ones in a browser that has signed in to the account before, whatever others try. */
export const KNOWN_LIMIT: Limit = { name: "account-known", most: 10, seconds: QUARTER_HOUR_S };
/** The same from one address, behind which a whole class may sit, each mistyping twice. */
export const ADDRESS_LIMIT: Limit = { name: "address", most: 60, seconds: QUARTER_HOUR_S };
/** Wrong class codes from one address, of some thirty million. */
export const CODE_LIMIT: Limit = { name: "code", most: 60, seconds: QUARTER_HOUR_S };
/** Wrong one-time words from one address, of some ten to the twenty-fifth. */
export const WORD_LIMIT: Limit = { name: "word", most: 30, seconds: QUARTER_HOUR_S };
/** Folders of marks that one address has graded: each may keep the server busy for a second. */
export const FOLDER_LIMIT: Limit = { name: "folder", most: 60, seconds: QUARTER_HOUR_S };
/** New students from one address: several classes at once, and no more work than the server can do. */
export const JOIN_LIMIT: Limit = { name: "join", most: 200, seconds: QUARTER_HOUR_S };

/** Counts older than this are forgotten. */
const FORGET_S = 24 * 60 * 60;

export type Try = { readonly allowed: true } | { readonly allowed: false; readonly waitS: number };

/**
 * Counts a try before it is known whether it is right, in one step, so that many at once are counted too. A right one is
 * given back. The store keeps a digest: not who tried, nor from where.
 */
export async function countTry(store: Store, limit: Limit, whose: string, now = new Date()): Promise<Try> {
  const { name, most, seconds } = limit;
  const since = now.toISOString();
  const stale = new Date(now.getTime() - seconds * 1000).toISOString();
  const { rows } = await sql<{ count: number; since: string }>`
    insert into tries (key, count, since) values (${digest(name, whose)}, 1, ${since})
    on conflict (key) do update set
      count = case when tries.since <= ${stale} then 1 else tries.count + 1 end,
      since = case when tries.since <= ${stale} then ${since} else tries.since end
    returning count, since`.execute(store.db);
  const counted = rows[0];
  if (!counted) throw new Error("A row that was put in comes back.");
  if (counted.count <= most) return { allowed: true };
  const forgotten = new Date(now.getTime() - FORGET_S * 1000).toISOString();
  await store.db.deleteFrom("tries").where("since", "<", forgotten).execute();
  const over = new Date(counted.since).getTime() + seconds * 1000;
  return { allowed: false, waitS: Math.max(1, Math.ceil((over - now.getTime()) / 1000)) };
}

/** A try that turned out right does not count. */
export async function giveBack(store: Store, limit: Limit, whose: string): Promise<void> {
  await sql`update tries set count = count - 1 where key = ${digest(limit.name, whose)} and count > 0`.execute(
    store.db,
  );
}

/** Who has shown that an account is theirs starts afresh. */
export async function forgetTries(store: Store, limit: Limit, whose: string): Promise<void> {
  await store.db.deleteFrom("tries").where("key", "=", digest(limit.name, whose)).execute();
}

/** What to tell someone who must wait. */
export function sayWait(waitS: number): string {
  const minutes = Math.ceil(waitS / 60);
  return `There were too many wrong tries. Wait ${minutes === 1 ? "a minute" : `${minutes} minutes`}, then try again.`;
}

function digest(name: string, whose: string): string {
  return createHash("sha256").update(`${name}\0${whose}`).digest("base64url");
}
