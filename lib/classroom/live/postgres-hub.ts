import { sql } from "kysely";
import pg from "pg";
import type { Store } from "../store/store";
import { type Hub, makeEars } from "./hub";

const CHANNEL = "plasterline_live";

/** How long to wait before listening anew after the connection broke, in milliseconds. */
const AGAIN_MS = 500;
const MOST_AGAIN_MS = 8000;

/**
 * The hub of several server processes with one PostgreSQL: a notice carries a vote's id and nothing else. A connection that
 * breaks is made anew, and everyone then looks again, for notices that came meanwhile are lost.
 *
 * https://www.postgresql.org/docs/15/sql-notify.html
 */
export async function makePostgresHub(store: Store): Promise<Hub> {
  const ears = makeEars();
  let client: pg.Client | null = null;
  let closed = false;
  let waitMs = AGAIN_MS;
  let timer: ReturnType<typeof setTimeout> | undefined;

  const later = () => {
    if (closed || timer) return;
    timer = setTimeout(() => {
      timer = undefined;
      void listen();
    }, waitMs);
    timer.unref();
    waitMs = Math.min(waitMs * 2, MOST_AGAIN_MS);
  };
  const listen = async () => {
    const fresh = new pg.Client({
      connectionString: store.databaseUrl ?? undefined,
      application_name: "plasterline live",
      keepAlive: true,
    });
    const lost = () => {
      if (client === fresh) client = null;
      later();
    };
    fresh.on("error", lost);
    fresh.on("end", lost);
    fresh.on("notification", ({ payload }) => payload && ears.call(payload));
    try {
      await fresh.connect();
      await fresh.query(`listen ${CHANNEL}`);
      if (closed) return void (await fresh.end());
      client = fresh;
      waitMs = AGAIN_MS;
      ears.callAll();
    } catch {
      fresh.removeListener("end", lost);
      await fresh.end().catch(() => {});
      later();
    }
  };
  await listen();
  return {
    tell: async (voteId) => {
      await sql`select pg_notify(${CHANNEL}, ${voteId})`.execute(store.db);
    },
    hear: ears.add,
    close: async () => {
      closed = true;
      clearTimeout(timer);
      await client?.end();
    },
  };
}
