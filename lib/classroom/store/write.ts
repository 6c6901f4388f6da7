import type { Kysely } from "kysely";
import { faultOf, type Refusal, refusal } from "./fault";
import type { Store } from "./store";
import type { Tables } from "./tables";

/** How often a transaction that lost a race is tried in all. */
const MOST_TRIES = 5;
/** How long to wait before the next try, growing with each, in milliseconds. */
const WAIT_MS = 20;

export type Written<Value> = { readonly ok: true; readonly value: Value } | ({ readonly ok: false } & Refusal);

/**
 * Does some work on the store, all of it or nothing: what is written when this answers `ok` survives the loss of the process
 * and of the power. A full disk, a lost database and too great a crowd are results with a sentence for the reader. Inside,
 * ask `all`, never `store.db`, which would wait for this very transaction.
 */
export async function write<Value>(
  store: Store,
  work: (all: Kysely<Tables>) => Promise<Value>,
): Promise<Written<Value>> {
  for (let tried = 1; ; tried++) {
    // A file that was deleted can still be written to, and is gone with the process.
    if (!store.stillThere()) return { ok: false, ...refusal("lost") };
    try {
      return { ok: true, value: await store.db.transaction().execute(work) };
    } catch (error) {
      const fault = faultOf(error);
      if (!fault) throw error;
      if (fault !== "busy" || tried >= MOST_TRIES) return { ok: false, ...refusal(fault) };
      await new Promise((resolve) => setTimeout(resolve, WAIT_MS * tried));
    }
  }
}
