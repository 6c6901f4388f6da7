import { closeSync, createWriteStream, fsyncSync, openSync, renameSync, rmSync } from "node:fs";
import { dirname } from "node:path";
import { Readable } from "node:stream";
import { pipeline } from "node:stream/promises";
import { createGzip } from "node:zlib";
import { type Kysely, sql } from "kysely";
import { takenMigrations } from "./form";
import type { Engine } from "./store";
import { TABLES, type Tables } from "./tables";

export const BACKUP_FORMAT = "plasterline.backup/1";

/** Rows fetched at a time: a hand-in can be some hundred kilobytes. */
const AT_A_TIME = 100;

type Row = Readonly<Record<string, unknown>>;

/**
 * Writes all that a store holds, as it is at one moment, to a file that either engine reads: lines of JSON, zipped. It holds
 * everybody's work and what proves who they are, so only its owner may read it. The file is there whole or not at all.
 *
 * @returns how many rows it holds
 */
export async function writeBackup(db: Kysely<Tables>, engine: Engine, file: string): Promise<number> {
  const unfinished = `${file}.unfinished`;
  let rows = 0;
  try {
    const snapshot = engine === "postgres" ? db.transaction().setIsolationLevel("repeatable read") : db.transaction();
    await snapshot.execute(async (moment) => {
      const lines = Readable.from(linesOf(moment, engine, () => rows++));
      await pipeline(lines, createGzip(), createWriteStream(unfinished, { mode: 0o600 }));
    });
    flush(unfinished, "r+");
    renameSync(unfinished, file);
  } catch (error) {
    rmSync(unfinished, { force: true });
    throw error;
  }
  flushFolder(dirname(file));
  return rows;
}

async function* linesOf(db: Kysely<Tables>, engine: Engine, count: () => void): AsyncGenerator<string> {
  const migrations = await takenMigrations(db);
  yield `${JSON.stringify({ format: BACKUP_FORMAT, made: new Date().toISOString(), engine, migrations })}\n`;
  const present = await db.introspection.getTables();
  let rows = 0;
  for (const { name, key } of TABLES) {
    if (!present.some((table) => table.name === name)) continue;
    for await (const row of rowsOf(db, name, key)) {
      rows += 1;
      count();
      yield `${JSON.stringify({ table: name, row: plainRow(row) })}\n`;
    }
  }
  // A file cut short at the end of a line would look whole without it.
  yield `${JSON.stringify({ end: true, rows })}\n`;
}

/** The rows of a table in the order of their keys, a few at a time. */
async function* rowsOf(db: Kysely<Tables>, table: string, key: readonly string[]): AsyncGenerator<Row> {
  const columns = sql.join(key.map((column) => sql.ref(column)));
  for (let last: Row | undefined; ; ) {
    const after = last && sql`where (${columns}) > (${sql.join(key.map((column) => last?.[column]))})`;
    const question = sql<Row>`select * from ${sql.table(table)} ${after ?? sql``} order by ${columns} limit ${sql.lit(AT_A_TIME)}`;
    const { rows } = await question.execute(db);
    yield* rows;
    last = rows.at(-1);
    if (rows.length < AT_A_TIME) return;
  }
}

/** What the drivers give differently, in one form: times as text, yes and no as 1 and 0. */
function plainRow(row: Row): Row {
  return Object.fromEntries(Object.entries(row).map(([column, value]) => [column, plainValue(value)]));
}

function plainValue(value: unknown): unknown {
  if (value instanceof Date) return value.toISOString();
  return typeof value === "boolean" ? Number(value) : value;
}

/** A rename is only kept once its folder is; some systems cannot open a folder, and need not. */
function flushFolder(folder: string): void {
  try {
    flush(folder, "r");
  } catch {}
}

function flush(path: string, flags: string): void {
  const opened = openSync(path, flags);
  try {
    fsyncSync(opened);
  } finally {
    closeSync(opened);
  }
}
