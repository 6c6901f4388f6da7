import { chmodSync, existsSync, mkdirSync, statSync } from "node:fs";
import { join } from "node:path";
import type Database from "better-sqlite3";
import { Kysely, SqliteDialect } from "kysely";
import { refusal } from "./fault";
import { holdFolder } from "./hold-folder";
import { loadSqlite } from "./load-sqlite";
import type { Connection, Store } from "./store";
import type { Tables } from "./tables";

const FILE = "plasterline.db";

/** How long a write waits for a reader of another process to get out of its way, in milliseconds. */
const BUSY_MS = 5000;

/** Statements kept ready. The program has a few dozen; lists of varying length make more. */
const MOST_STATEMENTS = 300;

/** The store in a folder, held for this process alone; its form is not looked at. */
export async function connectSqlite(folder: string): Promise<Connection> {
  const open = await loadSqlite();
  if (!open) return { ok: false, refusal: refusal("no-sqlite") };
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  // A folder that was there before may be open to others.
  chmodSync(folder, 0o700);
  const letGo = holdFolder(open, folder);
  if (!letGo) return { ok: false, refusal: refusal("held") };
  try {
    const database = open(join(folder, FILE), { timeout: BUSY_MS });
    database.pragma("journal_mode = WAL");
    // A hand-in that was acknowledged survives a power cut; NORMAL would lose the last ones.
    database.pragma("synchronous = FULL");
    database.pragma("foreign_keys = ON");
    return { ok: true, store: storeOf(database, folder, letGo) };
  } catch (error) {
    letGo();
    throw error;
  }
}

/** The same store to be read only, beside the process that holds it. */
export async function readSqlite(folder: string): Promise<Connection> {
  const open = await loadSqlite();
  if (!open) return { ok: false, refusal: refusal("no-sqlite") };
  if (!isSqliteThere(folder)) return { ok: false, refusal: refusal("nothing") };
  return { ok: true, store: storeOf(open(join(folder, FILE), { readonly: true, timeout: BUSY_MS }), folder, () => {}) };
}

/** The same store for a short errand, beside the process that holds it; both wait for each other's writes. */
export async function openSqliteBeside(folder: string): Promise<Connection> {
  const open = await loadSqlite();
  if (!open) return { ok: false, refusal: refusal("no-sqlite") };
  const database = open(join(folder, FILE), { fileMustExist: true, timeout: BUSY_MS });
  database.pragma("synchronous = FULL");
  database.pragma("foreign_keys = ON");
  return { ok: true, store: storeOf(database, folder, () => {}) };
}

/** Whether a folder holds a store at all. */
export function isSqliteThere(folder: string): boolean {
  return existsSync(join(folder, FILE));
}

function storeOf(database: Database.Database, folder: string, letGo: () => void): Store {
  const file = join(folder, FILE);
  const opened = statSync(file).ino;
  const db = new Kysely<Tables>({ dialect: new SqliteDialect({ database: keepReady(database) }) });
  return {
    db,
    engine: "sqlite",
    folder,
    databaseUrl: null,
    stillThere: () => statSync(file, { throwIfNoEntry: false })?.ino === opened,
    close: async () => {
      // Destroying an instance that never asked anything leaves its database open.
      await db.destroy();
      database.close();
      letGo();
    },
  };
}

/**
 * A database as the query builder wants it, with its statements kept ready. A full disk makes SQLite roll back by itself;
 * the second rollback would fail and hide why.
 */
function keepReady(database: Database.Database) {
  const ready = new Map<string, Database.Statement>();
  return {
    close: () => {
      database.close();
    },
    prepare: (sql: string) => {
      if (sql === "rollback" && !database.inTransaction) return database.prepare("select 1 where 0");
      const kept = ready.get(sql);
      if (kept) return kept;
      const made = database.prepare(sql);
      if (ready.size >= MOST_STATEMENTS) ready.clear();
      ready.set(sql, made);
      return made;
    },
  };
}
