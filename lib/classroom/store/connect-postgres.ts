import { Kysely, PostgresDialect } from "kysely";
import pg from "pg";
import { refusal } from "./fault";
import type { Connection } from "./store";
import type { Tables } from "./tables";

/** Connections of one server process; PostgreSQL allows a hundred in all unless told otherwise. */
const MOST_CONNECTIONS = 10;

/** How long to wait for a connection before saying that there is none, in milliseconds. */
const CONNECT_MS = 10_000;

/** The store in a PostgreSQL; its form is not looked at. */
export async function connectPostgres(databaseUrl: string, folder: string): Promise<Connection> {
  const pool = new pg.Pool({
    connectionString: databaseUrl,
    max: MOST_CONNECTIONS,
    connectionTimeoutMillis: CONNECT_MS,
    application_name: "plasterline",
  });
  // A connection that breaks while nobody uses it is thrown away; the next question opens another.
  pool.on("error", () => {});
  // One that breaks between two questions of a transaction would end the process: the next question tells of it anyway.
  pool.on("connect", (client) => client.on("error", () => {}));
  try {
    (await pool.connect()).release();
  } catch {
    await pool.end();
    return { ok: false, refusal: refusal("unreachable") };
  }
  const db = new Kysely<Tables>({ dialect: new PostgresDialect({ pool }) });
  return {
    ok: true,
    store: {
      db,
      engine: "postgres",
      folder,
      databaseUrl,
      stillThere: () => true,
      close: async () => {
        await db.destroy();
        if (!pool.ended) await pool.end();
      },
    },
  };
}
